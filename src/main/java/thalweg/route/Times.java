package thalweg.route;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import thalweg.fault.InputException;
import thalweg.fault.Sentence;

/**
 * How long a canyon takes, as somebody stated it.
 *
 * @param approachMinutes [min], 1 to 10,000
 * @param descentMinutes [min], 1 to 10,000
 * @param exitMinutes [min], 1 to 10,000
 */
public record Times(
        Optional<Integer> approachMinutes, Optional<Integer> descentMinutes, Optional<Integer> exitMinutes) {

    /** More than a week is a slip of the finger. */
    public static final int MOST_MINUTES = 10_000;

    /** Nothing stated. */
    public static final Times UNKNOWN = new Times(Optional.empty(), Optional.empty(), Optional.empty());

    public Times {
        boolean wrong = Stream.of(approachMinutes, descentMinutes, exitMinutes)
                .flatMap(Optional::stream)
                .anyMatch(minutes -> minutes < 1 || minutes > MOST_MINUTES);
        if (wrong) {
            throw new IllegalArgumentException("a time is 1 to " + MOST_MINUTES + " minutes");
        }
    }

    /**
     * Reads minutes as "90", "90 min", "1:30" or "1 h 30".
     *
     * @return 1 to {@link #MOST_MINUTES}
     * @throws InputException when they cannot be read, with what would do
     */
    public static int minutes(String text) {
        String plain = text.strip().toLowerCase(Locale.ROOT);
        int minutes = -1;
        if (plain.matches("\\d{1,5}( ?min)?")) {
            minutes = Integer.parseInt(plain.replaceAll("\\D", ""));
        } else if (plain.matches("\\d{1,3}(:[0-5]\\d| ?h( ?[0-5]?\\d)?( ?min)?)")) {
            String[] parts = plain.replace("min", "").strip().split("\\D+", -1);
            int rest = parts.length > 1 && !parts[1].isEmpty() ? Integer.parseInt(parts[1]) : 0;
            minutes = Integer.parseInt(parts[0]) * 60 + rest;
        }
        if (minutes < 1 || minutes > MOST_MINUTES) {
            throw new InputException(Sentence.of(
                    "The time \"{0}\" cannot be read; write minutes as 90, or hours and minutes as 1:30, up to"
                            + " a week.",
                    text.strip()));
        }
        return minutes;
    }
}
