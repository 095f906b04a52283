package thalweg.logbook;

/** What the list of all stations is sorted by. */
public enum StationOrder {
    /** Those that nobody has ever looked at first, then the longest not looked at; a month or a year counts as its end. */
    LOOKED,
    /** The worst condition of any part first; last those of which nothing is known. */
    CONDITION,
    NAME,
    /** By the canyon's name, from the top down. */
    CANYON
}
