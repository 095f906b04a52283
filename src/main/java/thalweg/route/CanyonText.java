package thalweg.route;

/** The headings under which a canyon is described. */
public enum CanyonText {
    ROPES,
    APPROACH,
    EXIT,
    SEASON,
    CATCHMENT,
    ACCESS,
    EMERGENCY,
    SOURCES,
    NOTES
}
