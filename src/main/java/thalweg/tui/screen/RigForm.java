package thalweg.tui.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.Set;
import thalweg.fault.InputException;
import thalweg.rig.LoadDraft;
import thalweg.rig.RigDraft;
import thalweg.rig.RigKind;
import thalweg.rig.SetupDraft;
import thalweg.rig.StrandMaterial;
import thalweg.tui.core.Surroundings;
import thalweg.tui.widget.Form;
import thalweg.units.Angle;
import thalweg.units.Force;
import thalweg.units.Mass;

/** The load and the material of a rig as a form, there and back. */
final class RigForm {

    private static final String OWN = "own";

    private RigForm() {}

    /** The form that shows a draft. */
    static Form of(RigDraft draft, Surroundings around) {
        LoadDraft load = draft.load();
        SetupDraft rig = draft.rig();
        String weight = load.massKilograms().isPresent()
                ? new Mass(load.massKilograms().getAsDouble()).print(around.units())
                : Force.kilonewtons(load.forceKilonewtons().orElse(0)).print(around.units());
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
        return Form.of(new Build(around)
                .value("load", "rig_form.load", weight, RigForm::load)
                .value("toward", "rig_form.toward", degrees(load.towardDegrees()), Angle::parse)
                .value("sway", "rig_form.sway", degrees(load.swayDegrees()), Angle::parse)
                .value("lean", "rig_form.lean", degrees(load.leanOutDegrees()), Angle::parse)
                .options("material", around.say("rig_form.material"), materials, labels, chosen)
                .value("stiffness", "rig_form.stiffness", kilonewtons(rig.stiffnessKilonewtons()), Quantities::strength)
                .value(
                        "strands",
                        "rig_form.strands",
                        rig.strands().isPresent() ? Long.toString(rig.strands().getAsLong()) : "2",
                        RigForm::strands)
                .text("name", "rig_form.name", draft.name())
                .done());
    }

    private static String degrees(OptionalDouble value) {
        return value.isPresent() ? new Angle(value.getAsDouble()).print() : "";
    }

    private static String kilonewtons(OptionalDouble value) {
        return value.isPresent() ? String.format(Locale.ROOT, "%.1f kN", value.getAsDouble()) : "";
    }

    private static long strands(String text) {
        if (!text.strip().matches("[1-9]")) {
            throw new InputException("\"" + text.strip() + "\" is no number of strands; write 1 to 9.");
        }
        return Long.parseLong(text.strip());
    }

    /** A load is a mass or a force; the unit says which. */
    private static LoadDraft load(String text) {
        String plain = text.strip().toLowerCase(Locale.ROOT);
        boolean force = plain.endsWith("n") || plain.endsWith("lbf");
        return force
                ? LoadDraft.ofForce(Force.parse(text).inKilonewtons(), 0, 0)
                : LoadDraft.ofMass(Mass.parse(text).kilograms(), 0, 0);
    }

    /** The draft with what the form says; its points and focus stay. */
    static RigDraft filled(RigDraft before, Filled filled) {
        LoadDraft weight = filled.text("load").isEmpty()
                        || filled.last().value("load").equals(filled.first().value("load"))
                ? before.load()
                : load(filled.text("load"));
        LoadDraft load = new LoadDraft(
                weight.massKilograms(),
                weight.forceKilonewtons(),
                angle(filled, "toward"),
                angle(filled, "sway"),
                angle(filled, "lean"),
                before.load().ropeOutMetres(),
                before.load().ropeStiffnessKilonewtons(),
                before.load().spread());
        SetupDraft rig = before.rig();
        String material = filled.text("material");
        double stiffness = material.equals(OWN)
                ? Quantities.strength(filled.text("stiffness")).inKilonewtons()
                : StrandMaterial.valueOf(material).nominal().inKilonewtons();
        SetupDraft setup = new SetupDraft(
                Optional.of(before.points().size() == 1 ? RigKind.SINGLE : RigKind.FOCUSED),
                rig.focus(),
                OptionalDouble.of(stiffness),
                OptionalLong.of(strands(filled.text("strands"))),
                Map.copyOf(rig.slackMetres()),
                Optional.empty(),
                OptionalDouble.empty(),
                rig.strandKilonewtons(),
                rig.knotEfficiency(),
                Set.of());
        return new RigDraft(filled.text("name"), before.points(), load, setup);
    }

    private static OptionalDouble angle(Filled filled, String key) {
        String text = filled.text(key);
        return text.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(Angle.parse(text).degrees());
    }
}
