package thalweg.route;

/** Which side of the watercourse, looking downstream. */
public enum Side {
    LEFT,
    CENTRE,
    RIGHT
}
