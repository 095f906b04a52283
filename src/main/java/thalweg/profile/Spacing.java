package thalweg.profile;

/** How the places of a profile stand along the line, and if not to scale, why. */
public enum Spacing {
    /** By their distances; those without one stand evenly between their neighbours. */
    TO_SCALE,
    /** Evenly, because there is nothing to compare with. */
    ONE_PLACE,
    /** Evenly, because fewer than two distances are known. */
    UNKNOWN,
    /** Evenly, because the distances decrease somewhere along the line. */
    BACKWARDS,
    /** Evenly, because all known distances are one and the same. */
    SAME
}
