package thalweg.plan;

/** How a drop is descended so that the ropes come down after the last. The better first. */
public enum Technique {
    /** One rope, both strands reach the landing. */
    DOUBLED,
    /** One rope to come down on, another that pulls it after; or the two joined and doubled. Both reach the landing. */
    TWO_ROPES,
    /**
     * One rope reaches and nothing brings it down after the last: people can be lowered from above on it, all but the last.
     */
    LOWERED,
    /** Ropes joined end to end because none reaches alone: somebody passes a knot under way. */
    KNOT_TO_PASS,
    /** Nothing at hand reaches. */
    NONE
}
