package thalweg.rig;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.BiConsumer;
import thalweg.fault.Sentence;
import thalweg.units.Force;
import thalweg.units.Length;

/** Turns the sling of a draft into one that can be laid, or into everything that is wrong with it. */
final class CheckSling {

    /** An assumed key, where a sling does not say how it stretches. */
    static final String STIFFNESS = "sling_EA_kN";

    private static final Range WIDE = Range.LENGTH;
    private static final Range LONG = new Range(0, true, 100, " m");

    private final String key;
    private final SlingDraft draft;
    private final BiConsumer<String, Sentence> refuse;
    private final Set<String> assumed;

    /**
     * @param point the path of the point's object
     * @param refuse takes a key and what is wrong with it
     * @param assumed takes the keys that stand at their defaults
     */
    CheckSling(String point, SlingDraft draft, BiConsumer<String, Sentence> refuse, Set<String> assumed) {
        this.key = point + ".sling.";
        this.draft = draft;
        this.refuse = refuse;
        this.assumed = assumed;
    }

    /**
     * The sling, which is one only where nothing was refused.
     *
     * @param kind of the rig; empty where it is not known
     * @param way from the point to the focus [m]; empty where it is not known
     */
    Optional<RigSling> result(Optional<RigKind> kind, OptionalDouble way) {
        if (draft.tie().isEmpty()) {
            refuse.accept(
                    key + "tie",
                    Sentence.of("is missing; it is one of: basket, choke, wrap_three_pull_two, tied_round"));
        }
        boolean sides = draft.tie().map(tie -> tie.sides() > 1).orElse(false);
        if (sides && draft.widthMetres().isEmpty()) {
            refuse.accept(
                    key + "width_m",
                    Sentence.of(
                            "is missing; state how wide the point is where the sling leaves it, for the angle of its"
                                    + " sides"));
        }
        Optional<Length> width = length("width_m", draft.widthMetres(), WIDE);
        Optional<Length> around = length("around_m", draft.aroundMetres(), LONG);
        if (width.isPresent()
                && around.isPresent()
                && around.get().metres() < 2 * width.get().metres()) {
            refuse.accept(
                    key + "around_m",
                    Sentence.of(
                            "is {0} m, less than there and back across its own width of {1} m",
                            Figures.plain(around.get().metres()),
                            Figures.plain(width.get().metres())));
        }
        Optional<Length> reach = length("reach_m", draft.reachMetres(), LONG);
        checkReach(kind, way);
        Optional<Force> stiffness = force("EA_kN", draft.stiffnessKilonewtons(), Range.STIFFNESS);
        if (stiffness.isEmpty()) {
            assumed.add(STIFFNESS);
        }
        Optional<Force> strand = force("strand_kN", draft.strandKilonewtons(), Range.STRENGTH);
        OptionalDouble knot = sound("knot_efficiency", draft.knotEfficiency(), Range.EFFICIENCY);
        return draft.tie()
                .map(tie -> new RigSling(
                        tie, width.orElse(new Length(0)), around, reach, stiffness, strand, knot, textile()));
    }

    private Textile textile() {
        Textile textile = draft.textile();
        if (textile.condition().equals(Optional.of(PartCondition.GONE))) {
            refuse.accept(
                    key + "condition",
                    Sentence.of("is gone, and a sling that is gone holds nothing; leave the sling out"));
        }
        return new Textile(
                textile.condition(),
                textile.fibre(),
                sound("age_years", textile.ageYears(), Range.YEARS),
                textile.kept());
    }

    private void checkReach(Optional<RigKind> kind, OptionalDouble way) {
        if (draft.reachMetres().isEmpty()) {
            kind.filter(one -> !one.takesSlingsAsLegs())
                    .ifPresent(one -> refuse.accept(
                            key + "reach_m",
                            Sentence.of(
                                    "is missing; in a rig of kind {0} the sling ends before the master: state how far its end"
                                            + " hangs from the point",
                                    one.word())));
        } else if (way.isPresent()
                && draft.reachMetres().getAsDouble() > way.getAsDouble() - RigInput.ONE_PLACE_METRES) {
            refuse.accept(
                    key + "reach_m",
                    Sentence.of(
                            "is {0} m; it must be below the {1} m from the point to the focus, or left out for a"
                                    + " sling that reaches to the master",
                            Figures.plain(draft.reachMetres().getAsDouble()), Figures.fixed(way.getAsDouble(), 3)));
        }
    }

    private Optional<Length> length(String name, OptionalDouble metres, Range range) {
        OptionalDouble sound = sound(name, metres, range);
        return sound.isPresent() ? Optional.of(new Length(sound.getAsDouble())) : Optional.empty();
    }

    private Optional<Force> force(String name, OptionalDouble kilonewtons, Range range) {
        return Stated.force(sound(name, kilonewtons, range));
    }

    /** The value where it is in its range; else it is refused and left out. */
    private OptionalDouble sound(String name, OptionalDouble value, Range range) {
        if (value.isEmpty()) {
            return value;
        }
        Optional<Sentence> objection = range.objection(value.getAsDouble());
        objection.ifPresent(sentence -> refuse.accept(key + name, sentence));
        return objection.isEmpty() ? value : OptionalDouble.empty();
    }
}
