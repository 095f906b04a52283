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

    /** Whether a group goes down here, so that a missing height is news; a walk or a hazard without one lacks nothing. */
    public boolean goesDown() {
        return switch (this) {
            case DROP, DOWNCLIMB, HANDLINE, JUMP, SLIDE -> true;
            case SWIM, WALK, HAZARD, ESCAPE, OTHER -> false;
        };
    }

    /** Whether a rope is usually rigged here. */
    public boolean usuallyRigged() {
        return this == DROP || this == HANDLINE;
    }
}
