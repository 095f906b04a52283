package thalweg.rig;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import thalweg.fault.Sentence;
import thalweg.units.Force;

/** Turns what else is stated of points, strands and master into what is known of them, or into what is wrong with it. */
final class CheckTraits {

    private static final int NUMBERS_OF_AN_AXIS = 3;

    private final BiConsumer<String, Sentence> refuse;
    private final Consumer<String> assume;

    /**
     * @param refuse takes a key and what is wrong with it
     * @param assume takes a key that stands at its default
     */
    CheckTraits(BiConsumer<String, Sentence> refuse, Consumer<String> assume) {
        this.refuse = refuse;
        this.assume = assume;
    }

    /** Refuses what is wrong with a point. */
    void check(String key, PointDraft point) {
        PointTraitsDraft traits = point.traits();
        if (traits.condition().equals(Optional.of(PartCondition.GONE))) {
            refuse.accept(
                    key + ".condition",
                    Sentence.of("is gone, and a point that is gone holds nothing; take it out of the rig"));
        }
        checkBolt(key, point.strengthKilonewtons().isPresent(), traits.bolt());
        traits.connector().ifPresent(connector -> check(key + ".connector", connector));
    }

    private void checkBolt(String key, boolean oneStrength, BoltDraft bolt) {
        if (!bolt.stated()) {
            return;
        }
        if (oneStrength) {
            refuse.accept(
                    key,
                    Sentence.of(
                            "states strength_kN beside radial_kN, axial_kN or axis; state one strength or the two"));
        }
        if (bolt.radialKilonewtons().isEmpty() || bolt.axialKilonewtons().isEmpty()) {
            refuse.accept(
                    key,
                    Sentence.of(
                            "states only a part of radial_kN and axial_kN; a strength in both directions needs both"));
        }
        check(key + ".radial_kN", bolt.radialKilonewtons(), Range.STRENGTH);
        check(key + ".axial_kN", bolt.axialKilonewtons(), Range.STRENGTH);
        checkAxis(key + ".axis", bolt.axis());
        if (bolt.axis().isEmpty()) {
            assume.accept("axis");
        }
    }

    private void checkAxis(String key, List<Double> axis) {
        if (axis.isEmpty()) {
            return;
        }
        if (axis.size() != NUMBERS_OF_AN_AXIS) {
            refuse.accept(
                    key,
                    axis.size() == 1
                            ? Sentence.of("has 1 number; it takes three: to the right, up, out of the wall")
                            : Sentence.of(
                                    "has {0} numbers; it takes three: to the right, up, out of the wall", axis.size()));
        } else if (axis.stream()
                .anyMatch(number -> Range.PLACE.objection(number).isPresent())) {
            refuse.accept(key, Sentence.of("holds a number that is not between -100 and 100"));
        } else if (axis.stream().allMatch(number -> Math.abs(number) < RigInput.ONE_PLACE_METRES)) {
            refuse.accept(key, Sentence.of("is no direction; write one such as [0, 0, 1]"));
        }
    }

    private void check(String key, ConnectorDraft connector) {
        check(key + ".strength_kN", connector.strengthKilonewtons(), Range.STRENGTH);
        check(key + ".across_kN", connector.acrossKilonewtons(), Range.STRENGTH);
        check(key + ".open_kN", connector.openKilonewtons(), Range.STRENGTH);
        if (connector.loaded().isEmpty()) {
            assume.accept("loaded");
        }
    }

    /** Refuses what is wrong with the strands and the master. */
    void check(SetupDraft rig) {
        StrandTraitsDraft traits = rig.traits();
        if (traits.condition().equals(Optional.of(PartCondition.GONE))) {
            refuse.accept(
                    "rig.condition",
                    Sentence.of("is gone, and strands that are gone hold nothing; state those that are there"));
        }
        if (traits.knot().isPresent() && rig.knotEfficiency().isPresent()) {
            refuse.accept("rig.knot", Sentence.of("stands beside knot_efficiency; state one of them"));
        }
        check("rig.strand_age_years", traits.ageYears(), Range.YEARS);
        traits.connector().ifPresent(connector -> check("rig.connector", connector));
        traits.derating().forEach((word, share) -> {
            if (DeratingKey.of(word).isEmpty()) {
                refuse.accept("rig.derating." + word, Sentence.of("is no factor; there are: {0}", DeratingKey.words()));
            }
            check("rig.derating." + word, OptionalDouble.of(share), Range.EFFICIENCY);
        });
    }

    private void check(String key, OptionalDouble value, Range range) {
        value.ifPresent(number -> range.objection(number).ifPresent(objection -> refuse.accept(key, objection)));
    }

    /** What the knots leave: the nominal share of the one that is named, or what is stated. */
    OptionalDouble efficiency(SetupDraft rig, OptionalDouble stated) {
        Optional<Knot> knot = rig.traits().knot();
        return knot.isPresent() ? OptionalDouble.of(knot.get().nominal().left()) : stated;
    }

    /** What is known of a point of which nothing was refused. */
    PointTraits of(PointTraitsDraft draft) {
        return new PointTraits(
                draft.condition(), bolt(draft.bolt()), draft.connector().map(CheckTraits::connector));
    }

    private static Optional<BoltStrength> bolt(BoltDraft draft) {
        if (!draft.stated()) {
            return Optional.empty();
        }
        boolean assumed = draft.axis().isEmpty();
        return Optional.of(new BoltStrength(
                Force.kilonewtons(draft.radialKilonewtons().orElseThrow()),
                Force.kilonewtons(draft.axialKilonewtons().orElseThrow()),
                assumed
                        ? BoltStrength.OUT_OF_WALL
                        : new Vector3(
                                draft.axis().get(0),
                                draft.axis().get(1),
                                draft.axis().get(2)),
                assumed));
    }

    private static Connector connector(ConnectorDraft draft) {
        return new Connector(
                Stated.force(draft.strengthKilonewtons()),
                Stated.force(draft.acrossKilonewtons()),
                Stated.force(draft.openKilonewtons()),
                draft.loaded().orElse(ConnectorLoad.LONG),
                draft.loaded().isEmpty());
    }

    /** What is known of strands and master of which nothing was refused. */
    StrandTraits of(StrandTraitsDraft draft) {
        Map<DeratingKey, Double> shares = new EnumMap<>(DeratingKey.class);
        draft.derating()
                .forEach((word, share) -> shares.put(DeratingKey.of(word).orElseThrow(), share));
        return new StrandTraits(
                draft.condition(),
                draft.knot(),
                draft.fibre(),
                draft.ageYears(),
                draft.kept(),
                draft.connector().map(CheckTraits::connector),
                new Derating(shares));
    }
}
