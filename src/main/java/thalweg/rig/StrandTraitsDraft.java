package thalweg.rig;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What else is stated of the strands and the master, right or wrong; empty is not stated.
 *
 * @param condition how the strands were found
 * @param knot that weakens them most, in place of a share
 * @param fibre that they are spun of
 * @param ageYears how old they are [years]
 * @param kept where they have been since
 * @param connector at the master
 * @param derating shares in place of the program's, by the words of {@link DeratingKey}
 */
public record StrandTraitsDraft(
        Optional<PartCondition> condition,
        Optional<Knot> knot,
        Optional<Fibre> fibre,
        OptionalDouble ageYears,
        Optional<Kept> kept,
        Optional<ConnectorDraft> connector,
        Map<String, Double> derating) {

    /** Nothing else is stated. */
    public static final StrandTraitsDraft NONE = new StrandTraitsDraft(
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            OptionalDouble.empty(),
            Optional.empty(),
            Optional.empty(),
            Map.of());

    public StrandTraitsDraft {
        derating = Collections.unmodifiableMap(new LinkedHashMap<>(derating));
    }

    static StrandTraitsDraft of(StrandTraits traits) {
        Map<String, Double> derating = new LinkedHashMap<>();
        traits.derating().stated().forEach((key, share) -> derating.put(key.word(), share));
        return new StrandTraitsDraft(
                traits.condition(),
                traits.knot(),
                traits.fibre(),
                traits.ageYears(),
                traits.kept(),
                traits.connector().map(ConnectorDraft::of),
                derating);
    }

    /** The same, tied with that knot. */
    public StrandTraitsDraft tied(Optional<Knot> other) {
        return new StrandTraitsDraft(condition, other, fibre, ageYears, kept, connector, derating);
    }

    /** The same, found in that condition. */
    public StrandTraitsDraft found(Optional<PartCondition> now) {
        return new StrandTraitsDraft(now, knot, fibre, ageYears, kept, connector, derating);
    }

    /** The same of that fibre, so many years old, kept there. */
    public StrandTraitsDraft aged(Optional<Fibre> of, OptionalDouble years, Optional<Kept> where) {
        return new StrandTraitsDraft(condition, knot, of, years, where, connector, derating);
    }

    /** The same with other shares. */
    public StrandTraitsDraft derated(Map<String, Double> shares) {
        return new StrandTraitsDraft(condition, knot, fibre, ageYears, kept, connector, shares);
    }

    /** The same with another connector at the master. */
    public StrandTraitsDraft withConnector(Optional<ConnectorDraft> other) {
        return new StrandTraitsDraft(condition, knot, fibre, ageYears, kept, other, derating);
    }
}
