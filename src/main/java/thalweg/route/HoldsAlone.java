package thalweg.route;

/** Whether somebody believes that a point would hold the whole load by itself. A belief, not a measurement. */
public enum HoldsAlone {
    YES,
    NO
}
