package thalweg.rig;

import java.util.Locale;

/** How a point or the material between the points was found. */
public enum PartCondition {
    /** Nothing was wrong with it. */
    SOUND,
    /** Used up in part. */
    WORN,
    /** Whoever looked would not say that it holds. */
    DOUBTFUL,
    /** Whoever looked would hang nothing on it. */
    UNSAFE,
    /** It is not there any more; no rig counts on it. */
    GONE,
    /** Nobody has looked at it. */
    UNKNOWN;

    /** How a rig file names it. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
