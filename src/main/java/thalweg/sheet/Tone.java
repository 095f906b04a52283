package thalweg.sheet;

import thalweg.logbook.Condition;

/**
 * What kind of news a text brings. The text says it by itself with a mark and a word; an output may add weight or
 * colour, and loses nothing where it cannot.
 */
public enum Tone {
    PLAIN,
    /** Beside the point, such as a count of what is left out. */
    QUIET,
    /** Nobody entered it, or nobody looked. */
    UNKNOWN,
    SOUND,
    WORN,
    DOUBTFUL,
    UNSAFE,
    GONE,
    /** Calls for care without being a condition. */
    CAUTION;

    /** The tone in which that condition is told. */
    public static Tone of(Condition condition) {
        return switch (condition) {
            case SOUND -> SOUND;
            case WORN -> WORN;
            case DOUBTFUL -> DOUBTFUL;
            case UNSAFE -> UNSAFE;
            case GONE -> GONE;
        };
    }
}
