package thalweg.logbook;

import java.util.Optional;

/**
 * A time of day as somebody notes it: typed, the moment at which it is noted, or nothing.
 *
 * @param at minutes after midnight, 0 to 1439; empty for now and for nothing
 * @param now whether it is the moment at which it is noted
 */
public record NotedTime(Optional<Integer> at, boolean now) {

    /** The moment at which it is noted. */
    public static final NotedTime NOW = new NotedTime(Optional.empty(), true);

    /** No time. */
    public static final NotedTime NONE = new NotedTime(Optional.empty(), false);

    /** The word that every language knows. */
    public static final String WORD = "now";

    public NotedTime {
        if (at.isPresent() && now) {
            throw new IllegalArgumentException("a time is typed, or it is now");
        }
    }

    /** That time, or nothing. */
    public static NotedTime of(Optional<Integer> at) {
        return new NotedTime(at, false);
    }

    /**
     * Reads "10:05", "now" or nothing.
     *
     * @param word for now in the language of the reader
     * @throws thalweg.fault.InputException when it is neither
     */
    public static NotedTime parse(String text, String word) {
        String plain = text.strip();
        if (plain.isEmpty()) {
            return NONE;
        }
        return plain.equalsIgnoreCase(WORD) || plain.equalsIgnoreCase(word)
                ? NOW
                : of(Optional.of(TripText.time(plain)));
    }

    /** The time that is meant, at that minute of the day. */
    public Optional<Integer> at(int minute) {
        return now ? Optional.of(minute) : at;
    }
}
