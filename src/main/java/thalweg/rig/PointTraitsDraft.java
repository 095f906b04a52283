package thalweg.rig;

import java.util.Optional;

/**
 * What else is stated of a point, right or wrong; empty is not stated.
 *
 * @param condition how it was found
 * @param bolt its two strengths, in place of the one
 * @param connector what is clipped into it
 */
public record PointTraitsDraft(Optional<PartCondition> condition, BoltDraft bolt, Optional<ConnectorDraft> connector) {

    /** Nothing else is stated. */
    public static final PointTraitsDraft NONE =
            new PointTraitsDraft(Optional.empty(), BoltDraft.NONE, Optional.empty());

    static PointTraitsDraft of(PointTraits traits) {
        return new PointTraitsDraft(
                traits.condition(),
                traits.bolt().map(BoltDraft::of).orElse(BoltDraft.NONE),
                traits.connector().map(ConnectorDraft::of));
    }

    /** The same, found in that condition. */
    public PointTraitsDraft found(Optional<PartCondition> now) {
        return new PointTraitsDraft(now, bolt, connector);
    }

    /** The same with other strengths of the bolt. */
    public PointTraitsDraft withBolt(BoltDraft other) {
        return new PointTraitsDraft(condition, other, connector);
    }
}
