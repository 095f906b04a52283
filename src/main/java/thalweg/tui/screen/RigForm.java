package thalweg.tui.screen;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.Set;
import java.util.function.Function;
import thalweg.fault.InputException;
import thalweg.fault.Sentence;
import thalweg.rig.Knot;
import thalweg.rig.LimitDraft;
import thalweg.rig.LoadDraft;
import thalweg.rig.RigDefaults;
import thalweg.rig.RigDraft;
import thalweg.rig.RigKind;
import thalweg.rig.SetupDraft;
import thalweg.rig.StrandMaterial;
import thalweg.tui.core.Surroundings;
import thalweg.tui.widget.Field;
import thalweg.tui.widget.Form;
import thalweg.units.Angle;
import thalweg.units.Length;

/** The load, the layout and the material of a rig as a form, there and back. */
final class RigForm {

    private static final String OWN = "own";
    private static final String YES = "yes";
    private static final String NO = "no";

    private RigForm() {}

    /** The form that shows a draft. */
    static Form of(RigDraft draft, Surroundings around) {
        LoadDraft load = draft.load();
        SetupDraft rig = draft.rig();
        Build form = new Build(around);
        LoadFields.add(form, load, around);
        form.value("toward", "rig_form.toward", degrees(load.towardDegrees()), Angle::parse)
                .value("sway", "rig_form.sway", degrees(load.swayDegrees()), Angle::parse)
                .value("lean", "rig_form.lean", degrees(load.leanOutDegrees()), Angle::parse);
        layouts(form, draft, around);
        materials(form, rig, around);
        form.value("stiffness", "rig_form.stiffness", kilonewtons(rig.stiffnessKilonewtons()), Quantities::strength)
                .value(
                        "strands",
                        "rig_form.strands",
                        rig.strands().isPresent() ? Long.toString(rig.strands().getAsLong()) : "",
                        RigForm::strands)
                .value("strand", "rig_form.strand", kilonewtons(rig.strandKilonewtons()), Quantities::strength);
        knots(form, rig.traits().knot(), around);
        form.value("knots", "rig_form.knots", percent(rig.knotEfficiency()), RigForm::share)
                .value(
                        "rope",
                        "rig_form.rope",
                        load.ropeOutMetres().isPresent()
                                ? new Length(load.ropeOutMetres().getAsDouble()).printFine(around.units())
                                : "",
                        Quantities::rope)
                .value(
                        "rope_stiffness",
                        "rig_form.rope_stiffness",
                        kilonewtons(load.ropeStiffnessKilonewtons()),
                        Quantities::strength)
                .text("name", "rig_form.name", draft.name());
        RedirectFields.add(form, draft, around);
        TraitFields.add(form, rig.traits(), around);
        PointFields.add(form, draft, around);
        return fitted(Form.of(form.done()));
    }

    /** Keys of the choices that stand at a default which nobody has stated. */
    static Set<String> unstated(RigDraft draft) {
        Set<String> keys = new HashSet<>();
        if (draft.rig().captured().isEmpty()) {
            keys.add("captured");
        }
        if (draft.rig().limits().sliderStrands().isEmpty()) {
            keys.add("slider");
        }
        return keys;
    }

    /** The form after a key: what is chosen in one field fills others, or leaves them without a say. */
    static Form adapted(Form before, Form after, Surroundings around) {
        Form filled = LoadFields.adapted(before, after, around);
        return hidden(after).equals(hidden(before)) ? filled : fitted(filled);
    }

    /** The form that shows only the fields of the layout that is chosen, and of slings and a redirect that are there. */
    static Form fitted(Form form) {
        return form.hiding(hidden(form));
    }

    private static Set<String> hidden(Form form) {
        Set<String> hidden = new HashSet<>(SlingFields.hidden(form));
        hidden.addAll(RedirectFields.hidden(form));
        kind(form)
                .ifPresent(kind -> form.fields().stream()
                        .map(Field::key)
                        .filter(field -> !kind.takes(rigKey(field)))
                        .forEach(hidden::add));
        return hidden;
    }

    private static Optional<RigKind> kind(Form form) {
        return Arrays.stream(RigKind.values())
                .filter(kind -> kind.word().equals(form.value("layout")))
                .findFirst();
    }

    /** The key of the rig file that a field states, where only some layouts take it; else one that all take. */
    private static String rigKey(String field) {
        return LimitFields.rigKey(field)
                .orElse(
                        switch (field) {
                            case "captured", "friction", "strands" -> field;
                            default -> "kind";
                        });
    }

    /** The layouts that take as many points as there are, how a master slides, and how far. */
    private static void layouts(Build form, RigDraft draft, Surroundings around) {
        int points = draft.points().size();
        List<RigKind> kinds = Arrays.stream(RigKind.values())
                .filter(kind -> kind.fewestPoints() <= points && points <= kind.mostPoints())
                .toList();
        form.options(
                        "layout",
                        around.say("rig_form.layout"),
                        kinds.stream().map(RigKind::word).toList(),
                        kinds.stream()
                                .map(kind -> around.say("rig.kind." + kind.word()))
                                .toList(),
                        draft.rig().kind().map(RigKind::word).orElse(""))
                .options(
                        "captured",
                        around.say("rig_form.captured"),
                        List.of(YES, NO),
                        List.of(around.say("rig.captured.yes"), around.say("rig.captured.no")),
                        draft.rig().captured().orElse(RigDefaults.CAPTURED) ? YES : NO)
                .value(
                        "friction",
                        "rig_form.friction",
                        draft.rig().friction().isPresent()
                                ? Double.toString(draft.rig().friction().getAsDouble())
                                : "",
                        RigForm::number);
        LimitFields.add(form, draft, around);
    }

    private static void materials(Build form, SetupDraft rig, Surroundings around) {
        List<String> materials = new ArrayList<>();
        List<String> labels = new ArrayList<>();
        String chosen = OWN;
        for (StrandMaterial material : StrandMaterial.values()) {
            materials.add(material.name());
            labels.add(around.say(material.key()) + " (" + material.nominal().print(around.units()) + ")");
            if (material.nominal().inKilonewtons() == rig.stiffnessKilonewtons().orElse(0)) {
                chosen = chosen.equals(OWN) ? material.name() : chosen;
            }
        }
        materials.add(OWN);
        labels.add(around.say("rig_form.own"));
        form.options("material", around.say("rig_form.material"), materials, labels, chosen);
    }

    private static void knots(Build form, Optional<Knot> chosen, Surroundings around) {
        List<String> knots = new ArrayList<>(List.of(OWN));
        List<String> labels = new ArrayList<>(List.of(around.say("rig_form.own_share")));
        for (Knot knot : Knot.values()) {
            knots.add(knot.name());
            labels.add(around.say(
                    "rig_form.knot_share",
                    around.say(knot.key()),
                    percent(knot.nominal()),
                    percent(knot.low()),
                    percent(knot.high())));
        }
        form.options(
                "knot",
                around.say("rig_form.knot"),
                knots,
                labels,
                chosen.map(Knot::name).orElse(OWN));
    }

    private static String percent(Knot.Share share) {
        return String.format(Locale.ROOT, "%.0f", 100 * share.left());
    }

    /** The knot whose share counts. A share that was typed now counts before a knot that was chosen earlier. */
    private static Optional<Knot> knot(Optional<Knot> before, Filled filled) {
        String chosen = filled.text("knot");
        Optional<Knot> knot = chosen.equals(OWN) ? Optional.empty() : Optional.of(Knot.valueOf(chosen));
        boolean typed = !filled.last().value("knots").equals(filled.first().value("knots"));
        return typed && knot.equals(before) ? Optional.empty() : knot;
    }

    private static String degrees(OptionalDouble value) {
        return value.isPresent() ? new Angle(value.getAsDouble()).print() : "";
    }

    private static String kilonewtons(OptionalDouble value) {
        return value.isPresent() ? String.format(Locale.ROOT, "%.1f kN", value.getAsDouble()) : "";
    }

    private static String percent(OptionalDouble value) {
        return value.isPresent() ? String.format(Locale.ROOT, "%.0f %%", 100 * value.getAsDouble()) : "";
    }

    private static long strands(String text) {
        if (!text.strip().matches("[1-9]")) {
            throw new InputException(Sentence.of("\"{0}\" is no number of strands; write 1 to 9.", text.strip()));
        }
        return Long.parseLong(text.strip());
    }

    /** A share of 0 to 1, of which 0 is none: "64 %" or "0.64". */
    static double share(String text) {
        String plain = text.strip();
        boolean percent = plain.endsWith("%");
        double number = number(percent ? plain.substring(0, plain.length() - 1) : plain);
        double share = percent ? number / 100 : number;
        if (share <= 0 || share > 1) {
            throw new InputException(Sentence.of("\"{0}\" is no share that knots leave; write 64 % or 0.64.", plain));
        }
        return share;
    }

    private static double number(String text) {
        String plain = text.strip().replace(',', '.');
        if (!plain.matches("\\d{1,4}(\\.\\d{1,6})?")) {
            throw new InputException(Sentence.of("\"{0}\" is no number here; write one such as 0.2.", text.strip()));
        }
        return Double.parseDouble(plain);
    }

    /** The draft with what the form says; its focus stays. */
    static RigDraft filled(RigDraft before, RigOptions options, Surroundings around) {
        Filled filled = options.filled();
        LoadDraft weight = LoadFields.filled(before.load(), filled, around);
        LoadDraft load = new LoadDraft(
                weight.massKilograms(),
                weight.forceKilonewtons(),
                angle(filled, "toward"),
                angle(filled, "sway"),
                angle(filled, "lean"),
                changed(
                        filled,
                        "rope",
                        before.load().ropeOutMetres(),
                        text -> Length.parse(text).metres()),
                changed(filled, "rope_stiffness", before.load().ropeStiffnessKilonewtons(), RigForm::strength),
                before.load().spread(),
                weight.factor());
        return new RigDraft(
                filled.text("name"),
                PointFields.filled(before, filled),
                load,
                setup(before, options),
                RedirectFields.filled(before, filled));
    }

    private static SetupDraft setup(RigDraft before, RigOptions options) {
        Filled filled = options.filled();
        SetupDraft rig = before.rig();
        Optional<Knot> knot = knot(rig.traits().knot(), filled);
        RigKind kind = filled.word("layout", RigKind.class).orElseThrow();
        String material = filled.text("material");
        OptionalDouble stiffness = material.equals(OWN)
                ? changed(filled, "stiffness", rig.stiffnessKilonewtons(), RigForm::strength)
                : OptionalDouble.of(StrandMaterial.valueOf(material).nominal().inKilonewtons());
        String strands = filled.text("strands");
        return new SetupDraft(
                Optional.of(kind),
                rig.focus(),
                stiffness,
                strands.isEmpty() || !kind.takes("strands") ? OptionalLong.empty() : OptionalLong.of(strands(strands)),
                kind.takes("slack_m") ? rig.slackMetres() : Map.of(),
                kind.takes("captured") ? captured(rig, options) : Optional.empty(),
                kind.takes("friction")
                        ? changed(filled, "friction", rig.friction(), RigForm::number)
                        : OptionalDouble.empty(),
                kind.takes("limit_m") ? LimitFields.filled(before, options) : LimitDraft.NONE,
                changed(filled, "strand", rig.strandKilonewtons(), RigForm::strength),
                knot.isPresent()
                        ? OptionalDouble.empty()
                        : changed(filled, "knots", rig.knotEfficiency(), RigForm::share),
                TraitFields.filled(rig.traits(), filled).tied(knot));
    }

    /** A choice at its default that nobody changed or confirmed stays unstated. */
    private static Optional<Boolean> captured(SetupDraft rig, RigOptions options) {
        return options.states("captured")
                ? Optional.of(options.filled().text("captured").equals(YES))
                : rig.captured();
    }

    private static double strength(String text) {
        return Quantities.strength(text).inKilonewtons();
    }

    /** The value that was typed; one that nobody touched stays as it was, not as it was rounded for showing. */
    private static OptionalDouble changed(
            Filled filled, String key, OptionalDouble before, Function<String, Double> parse) {
        Optional<Double> known = before.isPresent() ? Optional.of(before.getAsDouble()) : Optional.empty();
        Optional<Double> now = filled.value(key, known, parse);
        return now.isPresent() ? OptionalDouble.of(now.get()) : OptionalDouble.empty();
    }

    private static OptionalDouble angle(Filled filled, String key) {
        String text = filled.text(key);
        return text.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(Angle.parse(text).degrees());
    }
}
