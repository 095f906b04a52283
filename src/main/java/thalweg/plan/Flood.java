package thalweg.plan;

/**
 * Flash-flood potential in the words of the forecast that the leader has read; nobody works it out here.
 *
 * @see "US National Park Service, flash flood potential rating"
 */
public enum Flood {
    NOT_EXPECTED,
    POSSIBLE,
    PROBABLE,
    EXPECTED
}
