package thalweg.tui.screen;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import thalweg.fault.InputException;
import thalweg.fault.Sentence;
import thalweg.rig.BoltDraft;
import thalweg.rig.Fibre;
import thalweg.rig.Kept;
import thalweg.rig.PartCondition;
import thalweg.rig.PointDraft;
import thalweg.rig.PointTraitsDraft;
import thalweg.rig.StrandTraitsDraft;
import thalweg.tui.core.Surroundings;
import thalweg.units.Force;

/** The fields of a form that say what weakens the points, the strands and the connectors of a rig. */
final class TraitFields {

    private static final String HOLDS = "holds_";
    private static final String AXIAL = "axial_";
    private static final String CONDITION = "condition_";
    private static final String CONNECTOR = "connector_";
    private static final String STRANDS = "strands";
    private static final String MASTER = "master";
    private static final String FIBRE = "fibre";
    private static final String AGE = "age";
    private static final String KEPT = "kept";

    private TraitFields() {}

    /** Adds what a point holds, across and along its axis, how it was found and what is clipped into it. */
    static void add(Build form, int number, PointDraft point, Surroundings around) {
        BoltDraft bolt = point.traits().bolt();
        OptionalDouble holds =
                bolt.radialKilonewtons().isPresent() ? bolt.radialKilonewtons() : point.strengthKilonewtons();
        form.labelledValue(
                HOLDS + number,
                around.say("rig_form.holds", point.name()),
                around.say("help.rig_form.holds"),
                printed(holds, around),
                Quantities::strength);
        form.labelledValue(
                AXIAL + number,
                around.say("rig_form.axial", point.name()),
                around.say("help.rig_form.axial"),
                printed(bolt.axialKilonewtons(), around),
                Quantities::strength);
        condition(
                form,
                CONDITION + number,
                around.say("rig_form.condition", point.name()),
                point.traits().condition(),
                around);
        ConnectorFields.add(
                form,
                CONNECTOR + number,
                around.say("rig_form.connector", point.name()),
                point.traits().connector(),
                around);
    }

    /** Adds how the strands were found, what they are of and how old, and what is clipped in at the master. */
    static void add(Build form, StrandTraitsDraft traits, Surroundings around) {
        condition(form, CONDITION + STRANDS, around.say("rig_form.strands_condition"), traits.condition(), around);
        form.maybe(FIBRE, "rig_form.fibre", "rig.fibre", Fibre.class, traits.fibre());
        form.value(
                AGE,
                "rig_form.age",
                traits.ageYears().isPresent() ? plain(traits.ageYears().getAsDouble()) : "",
                TraitFields::years);
        form.maybe(KEPT, "rig_form.kept", "rig.kept", Kept.class, traits.kept());
        ConnectorFields.add(
                form, CONNECTOR + MASTER, around.say("rig_form.master_connector"), traits.connector(), around);
    }

    /** What is gone is in no rig, so that it cannot be chosen. */
    static void condition(Build form, String key, String label, Optional<PartCondition> stated, Surroundings around) {
        List<String> options = new ArrayList<>(List.of(""));
        List<String> labels = new ArrayList<>(List.of(around.say("rig_form.unstated")));
        Arrays.stream(PartCondition.values())
                .filter(condition -> condition != PartCondition.GONE)
                .forEach(condition -> {
                    options.add(condition.word());
                    labels.add(
                            condition == PartCondition.UNKNOWN
                                    ? around.say("rig_form.not_looked_at")
                                    : Looks.word(around, "condition", condition));
                });
        form.options(
                key, label, options, labels, stated.map(PartCondition::word).orElse(""));
    }

    private static String printed(OptionalDouble kilonewtons, Surroundings around) {
        return kilonewtons.isPresent()
                ? Force.kilonewtons(kilonewtons.getAsDouble()).print(around.units())
                : "";
    }

    static String plain(double number) {
        return number == Math.rint(number) ? Long.toString(Math.round(number)) : Double.toString(number);
    }

    /** "7" or "2.5". */
    static double years(String text) {
        String plain = text.strip().replace(',', '.');
        if (!plain.matches("\\d{1,2}(\\.\\d{1,3})?")) {
            throw new InputException(Sentence.of("\"{0}\" is no age; write years such as 3 or 2.5.", text.strip()));
        }
        return Double.parseDouble(plain);
    }

    /** The point as the form says; a strength along the axis makes the other one that across it. */
    static PointDraft filled(PointDraft before, int number, Filled filled) {
        BoltDraft bolt = before.traits().bolt();
        OptionalDouble holds = strength(
                filled,
                HOLDS + number,
                bolt.radialKilonewtons().isPresent() ? bolt.radialKilonewtons() : before.strengthKilonewtons());
        OptionalDouble axial = strength(filled, AXIAL + number, bolt.axialKilonewtons());
        boolean both = axial.isPresent();
        PointTraitsDraft traits = new PointTraitsDraft(
                filled.word(CONDITION + number, PartCondition.class),
                both ? new BoltDraft(holds, axial, bolt.axis()) : BoltDraft.NONE,
                ConnectorFields.filled(CONNECTOR + number, before.traits().connector(), filled));
        return before.withStrength(both ? OptionalDouble.empty() : holds).withTraits(traits);
    }

    private static OptionalDouble strength(Filled filled, String key, OptionalDouble before) {
        return number(filled.value(
                key, known(before), text -> Quantities.strength(text).inKilonewtons()));
    }

    private static Optional<Double> known(OptionalDouble value) {
        return value.isPresent() ? Optional.of(value.getAsDouble()) : Optional.empty();
    }

    private static OptionalDouble number(Optional<Double> value) {
        return value.isPresent() ? OptionalDouble.of(value.get()) : OptionalDouble.empty();
    }

    /** The strands and the master as the form says. */
    static StrandTraitsDraft filled(StrandTraitsDraft before, Filled filled) {
        return before.found(filled.word(CONDITION + STRANDS, PartCondition.class))
                .aged(
                        filled.word(FIBRE, Fibre.class),
                        number(filled.value(AGE, known(before.ageYears()), TraitFields::years)),
                        filled.word(KEPT, Kept.class))
                .withConnector(ConnectorFields.filled(CONNECTOR + MASTER, before.connector(), filled));
    }
}
