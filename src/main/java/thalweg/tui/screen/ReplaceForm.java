package thalweg.tui.screen;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import thalweg.body.ThingBody;
import thalweg.draft.DraftKey;
import thalweg.draft.DraftKind;
import thalweg.logbook.Condition;
import thalweg.logbook.Inspection;
import thalweg.logbook.WaterLevel;
import thalweg.logbook.Work;
import thalweg.route.Part;
import thalweg.route.PartialDate;
import thalweg.tui.core.Surroundings;
import thalweg.tui.widget.Form;
import thalweg.tui.widget.Paragraph;
import thalweg.units.Force;

/**
 * A part in the place of which another was put: how the old one was found, how the new one was left, and what the new one
 * is. Of what nobody enters nothing is known, whatever was known of the old one.
 *
 * @param go which
 */
record ReplaceForm(Go.Replace go) implements FormTask {

    private static final String FOUND = "found";
    private static final String LEFT = "left";
    private static final String MAKE = "make";
    private static final String OTHER = "other";
    private static final String SAME = "same";
    private static final Set<String> OF_THE_NEW = Stream.concat(
                    HardwareFields.KEYS.stream(), Stream.of("strength", "axial", "about"))
            .collect(Collectors.toUnmodifiableSet());

    private Part part() {
        return go.part().part();
    }

    @Override
    public String title(Surroundings around) {
        return around.say("form.replace.title", part().label());
    }

    @Override
    public List<Paragraph> intro(Surroundings around) {
        return List.of(Paragraph.of(around.say("form.replace.intro")));
    }

    @Override
    public Optional<DraftKey> draft() {
        return Optional.of(DraftKey.anew(DraftKind.INSPECTION, part().uid()));
    }

    @Override
    public Form form(Surroundings around) {
        Build build = new Build(around);
        RoundChoice.add(build, go.rounds(), Optional.empty(), around);
        build.day("on", "form.replace.on", around.today().toString())
                .signed("by", "form.replace.by", around.keeper())
                .maybe("water", "form.visit.water", "water", WaterLevel.class, Optional.empty())
                .options(
                        FOUND,
                        around.say("form.replace.found"),
                        FoundChoices.left(),
                        FoundChoices.labels(around.say("form.replace.not_noted"), around),
                        FoundChoices.SKIPPED)
                .options(
                        LEFT,
                        around.say("form.replace.left"),
                        FoundChoices.left(),
                        FoundChoices.labels(around.say("form.replace.choose"), around),
                        FoundChoices.SKIPPED)
                .options(
                        MAKE,
                        around.say("form.replace.make"),
                        List.of(OTHER, SAME),
                        List.of(
                                around.say("form.replace.other"),
                                around.say("form.replace.same", About.hardware(part(), around))),
                        OTHER);
        HardwareFields.add(build, Part.Hardware.UNKNOWN)
                .value("strength", "form.part.strength", "", Quantities::strength)
                .value("axial", "form.part.axial", "", Quantities::strength)
                .lines("about", "form.replace.about", "")
                .labelledLines("note", around.say("form.inspection.note"), around.say("form.replace.note_help"), "")
                .labelled("photo", around.say("form.inspection.photos"), around.say("form.visit.photo_help"));
        return Form.of(build.done()).focusedOn(FOUND);
    }

    /** What the same make is made of is known already. */
    @Override
    public Form adapted(Form before, Form after, Surroundings around) {
        Form filled = RoundChoice.filled(before, after, go.rounds());
        return filled.hiding(filled.value(MAKE).equals(SAME) ? OF_THE_NEW : Set.of());
    }

    @Override
    public String refusal(Filled filled, Surroundings around) {
        return filled.text(LEFT).isEmpty() ? around.say("form.replace.left_missing") : "";
    }

    @Override
    public Ask ask(Filled filled, Surroundings around) {
        PartialDate on = PartialDate.parse(filled.text("on"));
        Inspection inspection = new Inspection(
                part().uid(),
                on,
                filled.text("by"),
                filled.word(FOUND, Condition.class),
                filled.word(LEFT, Condition.class),
                filled.word("water", WaterLevel.class),
                List.of(Work.REPLACED),
                filled.text("note"),
                RoundChoice.chosen(filled),
                List.of());
        return new Ask.ReplacePart(
                ThingBody.of(part()),
                ThingBody.of(replacement(filled, on)),
                new Ask.Found(inspection, filled.photos("photo")));
    }

    private Part replacement(Filled filled, PartialDate on) {
        if (filled.text(MAKE).equals(SAME)) {
            return part().replacedOn(on, part().hardware(), part().strength(), part().axialStrength(), part().note());
        }
        return part().replacedOn(
                        on,
                        HardwareFields.filled(filled),
                        strength(filled, "strength"),
                        strength(filled, "axial"),
                        filled.text("about"));
    }

    private static Optional<Force> strength(Filled filled, String key) {
        return filled.value(key, Optional.empty(), Quantities::strength);
    }
}
