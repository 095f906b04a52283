package thalweg.route;

/** What an anchor at a station is for. */
public enum AnchorRole {
    MAIN,
    HIGH_WATER,
    ALTERNATIVE
}
