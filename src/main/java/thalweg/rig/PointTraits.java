package thalweg.rig;

import java.util.Optional;

/**
 * What else is known of a point.
 *
 * @param condition how it was found; empty where nobody stated it
 * @param bolt its strengths across and along its axis; empty for a point of one strength
 * @param connector what is clipped into it; empty where nobody stated it
 */
public record PointTraits(
        Optional<PartCondition> condition, Optional<BoltStrength> bolt, Optional<Connector> connector) {

    /** Nothing else is known. */
    public static final PointTraits NONE = new PointTraits(Optional.empty(), Optional.empty(), Optional.empty());

    public PointTraits {
        if (condition.equals(Optional.of(PartCondition.GONE))) {
            throw new IllegalArgumentException("a point that is gone is in no rig");
        }
    }
}
