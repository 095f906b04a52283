package thalweg.tui.screen;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import thalweg.draft.DraftKey;
import thalweg.draft.DraftKind;
import thalweg.logbook.Condition;
import thalweg.logbook.Inspection;
import thalweg.logbook.Photo;
import thalweg.logbook.WaterLevel;
import thalweg.logbook.Work;
import thalweg.route.PartialDate;
import thalweg.tui.core.Effect;
import thalweg.tui.core.Surroundings;
import thalweg.tui.widget.Form;

/**
 * An inspection to correct: filled in with what it says now, and with a reason to give. The photos that it has are kept
 * unless they are left out.
 *
 * @param go which
 */
record InspectionForm(Go.CorrectInspection go) implements FormTask {

    private static final String YES = "yes";
    private static final String NO = "no";

    @Override
    public String title(Surroundings around) {
        return around.say("form.inspection.correct", go.part().part().label());
    }

    @Override
    public Optional<DraftKey> draft() {
        return Optional.of(DraftKey.of(DraftKind.INSPECTION, go.wrong().uid()));
    }

    @Override
    public Form form(Surroundings around) {
        Inspection wrong = go.wrong().content();
        Build build = new Build(around);
        build.options(
                        "found",
                        around.say("form.inspection.found"),
                        FoundChoices.found(),
                        FoundChoices.foundLabels(around.say("unknown"), around),
                        wrong.wasSeen()
                                ? wrong.found().map(FoundChoices::key).orElse(FoundChoices.SKIPPED)
                                : FoundChoices.NOT_SEEN)
                .options(
                        "left",
                        around.say("form.inspection.left"),
                        FoundChoices.left(),
                        FoundChoices.leftLabels(around),
                        wrong.left().map(FoundChoices::key).orElse(FoundChoices.SKIPPED));
        RoundChoice.add(build, go.rounds(), wrong.round(), around);
        build.day("on", "form.visit.on", wrong.on().print())
                .text("by", "form.visit.by", wrong.by())
                .maybe("water", "form.visit.water", "water", WaterLevel.class, wrong.water());
        for (Work work : Work.values()) {
            yesOrNo(
                    build,
                    key(work),
                    around.say("form.inspection.work", Looks.word(around, "work", work)),
                    wrong.work().contains(work),
                    around);
        }
        build.labelledLines(
                "note", around.say("form.inspection.note"), around.say("form.visit.note_help"), wrong.note());
        for (int i = 0; i < wrong.photos().size(); i++) {
            String file = wrong.photos().get(i).file();
            yesOrNo(build, "keep" + i, around.say("form.inspection.keep", file), true, around);
        }
        build.labelled("photo", around.say("form.inspection.photos"), around.say("form.visit.photo_help"));
        return Form.of(build.reason().done());
    }

    private static String key(Work work) {
        return "work_" + FoundChoices.key(work);
    }

    private static void yesOrNo(Build build, String key, String label, boolean yes, Surroundings around) {
        build.options(
                key, label, List.of(NO, YES), List.of(around.say("field.no"), around.say("field.yes")), yes ? YES : NO);
    }

    @Override
    public Form adapted(Form before, Form after, Surroundings around) {
        return RoundChoice.filled(before, after, go.rounds());
    }

    private static List<Work> work(Filled filled) {
        return Arrays.stream(Work.values())
                .filter(work -> filled.text(key(work)).equals(YES))
                .toList();
    }

    @Override
    public String refusal(Filled filled, Surroundings around) {
        String found = filled.text("found");
        boolean left = !filled.text("left").isEmpty();
        String label = go.part().part().label();
        if (found.equals(FoundChoices.NOT_SEEN) && (left || !work(filled).isEmpty())) {
            return around.say("form.visit.not_seen_but_more", label);
        }
        if (found.isEmpty() && !left) {
            return around.say("form.visit.skipped_but_more", label);
        }
        return inspection(filled, List.of())
                .unsaid()
                .map(why -> around.labelled(label, around.phrases().say(why)))
                .orElse("");
    }

    @Override
    public Effect ask(Filled filled, Surroundings around) {
        List<Photo> had = go.wrong().content().photos();
        List<Photo> kept = IntStream.range(0, had.size())
                .filter(i -> filled.text("keep" + i).equals(YES))
                .mapToObj(had::get)
                .toList();
        Inspection right = inspection(filled, kept);
        return new Amend.CorrectInspection(go.wrong().uid(), right, filled.photos("photo"), filled.text(Build.REASON));
    }

    private Inspection inspection(Filled filled, List<Photo> kept) {
        return new Inspection(
                go.part().part().uid(),
                PartialDate.parse(filled.text("on")),
                filled.text("by"),
                filled.word("found", Condition.class),
                filled.word("left", Condition.class),
                filled.word("water", WaterLevel.class),
                work(filled),
                filled.text("note"),
                RoundChoice.chosen(filled),
                kept);
    }
}
