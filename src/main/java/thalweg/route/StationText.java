package thalweg.route;

/** The headings under which a station is described. */
public enum StationText {
    FINDING,
    RUB_POINTS,
    LANDING,
    NOTES
}
