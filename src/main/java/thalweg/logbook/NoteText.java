package thalweg.logbook;

/** The headings of a rigging note. */
public enum NoteText {
    TECHNIQUE,
    ROPE_SET,
    PULL_DIRECTION,
    EDGE_PROTECTION,
    BACK_UP,
    LANDING,
    TROUBLE,
    OTHER
}
