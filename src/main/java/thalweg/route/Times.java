package thalweg.route;

import java.util.Optional;
import java.util.stream.Stream;

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
}
