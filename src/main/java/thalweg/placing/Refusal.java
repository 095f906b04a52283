package thalweg.placing;

/** Why a decision about a waypoint cannot be taken. */
public enum Refusal {
    /** Another waypoint says already where that is. */
    TAKEN_BY_ANOTHER,
    /** It is a new place, and other waypoints are stations there. */
    CARRIES_A_STATION,
    /** It is that place itself. */
    IS_THE_PLACE
}
