package thalweg.draft;

/** The forms whose entries are kept. */
public enum DraftKind {
    CANYON,
    OBSTACLE,
    STATION,
    ANCHOR,
    PART,
    /** Inspections of all parts of a station. */
    VISIT,
    /** Inspections of all parts of a canyon, on one round. */
    DOWN,
    /** One inspection, to correct it. */
    INSPECTION,
    ROUND,
    NOTE,
    TRIP,
    PRIVATE_NOTE,
    TAKE_OUT,
    TAKE_OUT_TRIP,
    WITHDRAW,
    SHEET,
    WAYPOINTS,
    RIG
}
