package thalweg.drawing;

/** What a stroke is for; each output chooses how it looks, and none relies on colour alone. */
public enum Ink {
    /** The thing that is drawn. */
    MAIN,
    /** What the eye should find first. */
    STRONG,
    /** Scales, grids and what is only there for orientation. */
    FAINT,
    /** An arrow or bar whose length is a measured figure. */
    FORCE,
    /** What calls for care. */
    CAUTION
}
