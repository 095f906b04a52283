package thalweg.tui.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import thalweg.draft.DraftKey;
import thalweg.draft.DraftKind;
import thalweg.logbook.Condition;
import thalweg.logbook.ConditionWords;
import thalweg.logbook.Entry;
import thalweg.logbook.Inspection;
import thalweg.logbook.PartRecord;
import thalweg.logbook.Round;
import thalweg.logbook.StationRecord;
import thalweg.logbook.WaterLevel;
import thalweg.logbook.Work;
import thalweg.route.PartialDate;
import thalweg.tui.core.Surroundings;
import thalweg.tui.widget.Form;

/**
 * One visit to a station: what was found on every part. First the condition of each, one letter a part; then, part by
 * part, what else there is to say.
 *
 * @param station that was visited
 * @param rounds of the canyon to which the visit may belong, newest first
 */
record VisitForm(StationRecord station, List<Entry<Round>> rounds) implements FormTask {

    VisitForm {
        rounds = List.copyOf(rounds);
    }

    @Override
    public String title(Surroundings around) {
        return around.say("form.visit.new", station.station().name());
    }

    @Override
    public Optional<DraftKey> draft() {
        return Optional.of(DraftKey.anew(DraftKind.VISIT, station.station().uid()));
    }

    @Override
    public Form form(Surroundings around) {
        Build build = new Build(around);
        RoundChoice.add(build, rounds, Optional.empty(), around);
        build.day("on", "form.visit.on", around.today().toString())
                .signed("by", "form.visit.by", around.keeper())
                .maybe("water", "form.visit.water", "water", WaterLevel.class, Optional.empty());
        List<PartRecord> parts = station.parts();
        for (int i = 0; i < parts.size(); i++) {
            String label = around.say(
                    "form.visit.found",
                    parts.get(i).part().label(),
                    ConditionWords.told(parts.get(i).state().condition(), around.phrases()));
            build.quick(
                    key("found", parts.get(i)),
                    label,
                    FoundChoices.found(),
                    FoundChoices.foundLabels(around.say("form.visit.skipped"), around),
                    FoundChoices.SKIPPED);
        }
        for (int i = 0; i < parts.size(); i++) {
            more(build, parts.get(i), around);
        }
        Form form = Form.of(build.done());
        return parts.isEmpty() ? form : form.focusedOn(key("found", parts.get(0)));
    }

    /** By the part and not by its number: a draft must find it again where parts were added or moved meanwhile. */
    private static String key(String what, PartRecord part) {
        return what + "-" + part.part().uid().text();
    }

    private static void more(Build build, PartRecord record, Surroundings around) {
        String part = record.part().label();
        build.options(
                        key("left", record),
                        around.say("form.visit.left", part),
                        FoundChoices.left(),
                        FoundChoices.leftLabels(around),
                        FoundChoices.SKIPPED)
                .options(
                        key("work", record),
                        around.say("form.visit.work", part),
                        FoundChoices.work(),
                        FoundChoices.workLabels(around),
                        FoundChoices.SKIPPED)
                .labelled(key("note", record), around.say("form.visit.note", part), around.say("form.visit.note_help"))
                .labelled(
                        key("photo", record),
                        around.say("form.visit.photo", part),
                        around.say("form.visit.photo_help"));
    }

    @Override
    public Form adapted(Form before, Form after) {
        return RoundChoice.filled(before, after, rounds);
    }

    @Override
    public String refusal(Filled filled, Surroundings around) {
        boolean any = false;
        for (PartRecord part : station.parts()) {
            String found = filled.text(key("found", part));
            boolean more = !filled.text(key("left", part)).isEmpty()
                    || !filled.text(key("work", part)).isEmpty();
            boolean told = !filled.text(key("note", part)).isEmpty()
                    || !filled.text(key("photo", part)).isEmpty();
            String label = part.part().label();
            if (found.equals(FoundChoices.NOT_SEEN) && more) {
                return around.say("form.visit.not_seen_but_more", label);
            }
            if (found.isEmpty() && (more || told)) {
                return around.say("form.visit.skipped_but_more", label);
            }
            any = any || !found.isEmpty();
        }
        return any ? "" : around.say("form.visit.empty");
    }

    @Override
    public Ask ask(Filled filled, Surroundings around) {
        List<Ask.Found> found = new ArrayList<>();
        for (PartRecord part : station.parts()) {
            if (filled.text(key("found", part)).isEmpty()) {
                continue;
            }
            Inspection inspection = new Inspection(
                    part.part().uid(),
                    PartialDate.parse(filled.text("on")),
                    filled.text("by"),
                    filled.word(key("found", part), Condition.class),
                    filled.word(key("left", part), Condition.class),
                    filled.word("water", WaterLevel.class),
                    filled.word(key("work", part), Work.class).stream().toList(),
                    filled.text(key("note", part)),
                    RoundChoice.chosen(filled),
                    List.of());
            found.add(new Ask.Found(inspection, filled.photos(key("photo", part))));
        }
        return new Ask.AddInspections(found);
    }
}
