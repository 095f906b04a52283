package thalweg.logbook;

/** What was done to a part during a visit. */
public enum Work {
    ADDED,
    REPLACED,
    REMOVED,
    CLEANED,
    TIGHTENED
}
