package thalweg.tui.screen;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;
import thalweg.rig.Fibre;
import thalweg.rig.Kept;
import thalweg.rig.PartCondition;
import thalweg.rig.PointDraft;
import thalweg.rig.PointKind;
import thalweg.rig.SlingDraft;
import thalweg.rig.SlingTie;
import thalweg.rig.Textile;
import thalweg.tui.core.Surroundings;
import thalweg.tui.widget.Field;
import thalweg.tui.widget.Form;
import thalweg.units.Force;
import thalweg.units.Length;

/** The fields of a form that say what a point is and what is slung round it. */
final class SlingFields {

    private static final String KIND = "is_";
    private static final String TIE = "sling_tie_";
    private static final String WIDTH = "sling_width_";
    private static final String AROUND = "sling_around_";
    private static final String REACH = "sling_reach_";
    private static final String STIFFNESS = "sling_stiffness_";
    private static final String STRAND = "sling_strand_";
    private static final String KNOT = "sling_knot_";
    private static final String CONDITION = "sling_condition_";
    private static final String FIBRE = "sling_fibre_";
    private static final String AGE = "sling_age_";
    private static final String KEPT = "sling_kept_";
    private static final String NONE = "";

    /** What is asked of a sling once there is one. */
    private static final List<String> OF_A_SLING =
            List.of(WIDTH, AROUND, REACH, STIFFNESS, STRAND, KNOT, CONDITION, FIBRE, AGE, KEPT);

    private SlingFields() {}

    /** Adds them for the point of that number. */
    static void add(Build form, int i, PointDraft point, Surroundings around) {
        Optional<SlingDraft> sling = point.sling();
        choices(form, i, point, around);
        length(form, WIDTH + i, "rig_form.sling.width", point, sling.map(SlingDraft::widthMetres), around);
        length(form, AROUND + i, "rig_form.sling.around", point, sling.map(SlingDraft::aroundMetres), around);
        length(form, REACH + i, "rig_form.sling.reach", point, sling.map(SlingDraft::reachMetres), around);
        force(
                form,
                STIFFNESS + i,
                "rig_form.sling.stiffness",
                point,
                sling.map(SlingDraft::stiffnessKilonewtons),
                around);
        force(form, STRAND + i, "rig_form.sling.strand", point, sling.map(SlingDraft::strandKilonewtons), around);
        labelled(
                form,
                KNOT + i,
                "rig_form.sling.knot",
                point,
                printed(
                        sling.map(SlingDraft::knotEfficiency),
                        share -> String.format(Locale.ROOT, "%.0f %%", 100 * share)),
                RigForm::share,
                around);
        textile(form, i, point, around);
    }

    private static void textile(Build form, int i, PointDraft point, Surroundings around) {
        Textile textile = point.sling().map(SlingDraft::textile).orElse(Textile.UNKNOWN);
        TraitFields.condition(
                form, CONDITION + i, around.say("rig_form.sling.condition", point.name()), textile.condition(), around);
        form.labelledMaybe(
                FIBRE + i,
                around.say("rig_form.sling.fibre", point.name()),
                around.say("help.rig_form.fibre"),
                "rig.fibre",
                Fibre.class,
                textile.fibre());
        form.labelledValue(
                AGE + i,
                around.say("rig_form.sling.age", point.name()),
                around.say("help.rig_form.age"),
                textile.ageYears().isPresent()
                        ? TraitFields.plain(textile.ageYears().getAsDouble())
                        : "",
                TraitFields::years);
        form.labelledMaybe(
                KEPT + i,
                around.say("rig_form.sling.kept", point.name()),
                around.say("help.rig_form.kept"),
                "rig.kept",
                Kept.class,
                textile.kept());
    }

    private static void choices(Build form, int i, PointDraft point, Surroundings around) {
        List<String> kinds = new ArrayList<>(List.of(NONE));
        List<String> kindLabels = new ArrayList<>(List.of(around.say("rig_form.is.unsaid")));
        for (PointKind kind : PointKind.values()) {
            kinds.add(kind.word());
            kindLabels.add(around.say(kind.key()));
        }
        List<String> ties = new ArrayList<>(List.of(NONE));
        List<String> tieLabels = new ArrayList<>(List.of(around.say("rig_form.sling.none")));
        for (SlingTie tie : SlingTie.values()) {
            ties.add(tie.word());
            tieLabels.add(around.say(tie.key()));
        }
        form.options(
                        KIND + i,
                        around.say("rig_form.is", point.name()),
                        kinds,
                        kindLabels,
                        point.is().map(PointKind::word).orElse(NONE))
                .options(
                        TIE + i,
                        around.say("rig_form.sling", point.name()),
                        ties,
                        tieLabels,
                        point.sling()
                                .flatMap(SlingDraft::tie)
                                .map(SlingTie::word)
                                .orElse(NONE));
    }

    private static void length(
            Build form,
            String key,
            String phrase,
            PointDraft point,
            Optional<OptionalDouble> metres,
            Surroundings around) {
        String text = printed(metres, stated -> new Length(stated).printFine(around.units()));
        labelled(form, key, phrase, point, text, Length::parse, around);
    }

    private static void force(
            Build form,
            String key,
            String phrase,
            PointDraft point,
            Optional<OptionalDouble> kilonewtons,
            Surroundings around) {
        String text = printed(kilonewtons, stated -> Force.kilonewtons(stated).print(around.units()));
        labelled(form, key, phrase, point, text, Quantities::strength, around);
    }

    private static void labelled(
            Build form,
            String key,
            String phrase,
            PointDraft point,
            String text,
            Function<String, ?> parse,
            Surroundings around) {
        form.labelledValue(key, around.say(phrase, point.name()), around.say("help." + phrase), text, parse);
    }

    private static String printed(Optional<OptionalDouble> value, Function<Double, String> print) {
        return value.filter(OptionalDouble::isPresent)
                .map(known -> print.apply(known.getAsDouble()))
                .orElse("");
    }

    /** The fields of slings that are not there. */
    static Set<String> hidden(Form form) {
        Set<String> hidden = new HashSet<>();
        for (Field field : form.fields()) {
            if (field.key().startsWith(TIE) && field.value().equals(NONE)) {
                String point = field.key().substring(TIE.length());
                OF_A_SLING.forEach(key -> hidden.add(key + point));
            }
        }
        return hidden;
    }

    /** The point with what the form says of its kind and its sling. */
    static PointDraft filled(PointDraft point, int i, Filled filled) {
        Optional<PointKind> kind = Arrays.stream(PointKind.values())
                .filter(one -> one.word().equals(filled.text(KIND + i)))
                .findFirst();
        Optional<SlingTie> tie = Arrays.stream(SlingTie.values())
                .filter(one -> one.word().equals(filled.text(TIE + i)))
                .findFirst();
        Optional<SlingDraft> before = point.sling();
        Optional<SlingDraft> after = tie.map(chosen -> new SlingDraft(
                Optional.of(chosen),
                number(filled, WIDTH + i, before.map(SlingDraft::widthMetres), SlingFields::metres),
                number(filled, AROUND + i, before.map(SlingDraft::aroundMetres), SlingFields::metres),
                number(filled, REACH + i, before.map(SlingDraft::reachMetres), SlingFields::metres),
                number(filled, STIFFNESS + i, before.map(SlingDraft::stiffnessKilonewtons), SlingFields::kilonewtons),
                number(filled, STRAND + i, before.map(SlingDraft::strandKilonewtons), SlingFields::kilonewtons),
                number(filled, KNOT + i, before.map(SlingDraft::knotEfficiency), RigForm::share),
                new Textile(
                        filled.word(CONDITION + i, PartCondition.class),
                        filled.word(FIBRE + i, Fibre.class),
                        number(
                                filled,
                                AGE + i,
                                before.map(sling -> sling.textile().ageYears()),
                                TraitFields::years),
                        filled.word(KEPT + i, Kept.class))));
        return point.withSling(kind, after);
    }

    private static double metres(String text) {
        return Length.parse(text).metres();
    }

    private static double kilonewtons(String text) {
        return Quantities.strength(text).inKilonewtons();
    }

    /** The value that was typed; one that nobody touched stays as it was, not as it was rounded for showing. */
    private static OptionalDouble number(
            Filled filled, String key, Optional<OptionalDouble> before, Function<String, Double> parse) {
        Optional<Double> known = before.filter(OptionalDouble::isPresent).map(OptionalDouble::getAsDouble);
        return filled.value(key, known, parse).map(OptionalDouble::of).orElse(OptionalDouble.empty());
    }
}
