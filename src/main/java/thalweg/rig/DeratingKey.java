package thalweg.rig;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * What a strength is multiplied by where somebody states another figure than the program's. No published table says what
 * a worn bolt or sling still holds: the figures for conditions are our own choice.
 */
public enum DeratingKey {
    /** A part that was found worn; our choice 0.5. */
    WORN,
    /** A part that was found doubtful; ours is none: what it holds is unknown. */
    DOUBTFUL,
    /** A part that nobody has looked at; ours is none, and that is said. */
    UNKNOWN,
    /** Textile of the age that is stated; ours is what {@link TextileAge} has of published tests. */
    AGE,
    /** A sling that is choked round its point; ours is the 0.8 of sling trade tables. */
    CHOKE;

    /** How a rig file and the settings name it. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The key of that word; empty where there is none. */
    public static Optional<DeratingKey> of(String word) {
        return Arrays.stream(values()).filter(key -> key.word().equals(word)).findFirst();
    }

    /** All words, as "worn, doubtful". */
    public static String words() {
        return Arrays.stream(values()).map(DeratingKey::word).collect(Collectors.joining(", "));
    }
}
