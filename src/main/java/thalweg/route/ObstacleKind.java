package thalweg.route;

/** What a place along the line asks of a group. */
public enum ObstacleKind {
    DROP,
    DOWNCLIMB,
    HANDLINE,
    JUMP,
    SLIDE,
    SWIM,
    WALK,
    HAZARD,
    ESCAPE,
    OTHER;

    /** Whether a rope is usually rigged here. */
    public boolean usuallyRigged() {
        return this == DROP || this == HANDLINE;
    }
}
