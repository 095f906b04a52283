package thalweg.tui.screen;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import thalweg.logbook.Condition;
import thalweg.logbook.Inspection;
import thalweg.logbook.PartRecord;
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
 */
record VisitForm(StationRecord station) implements FormTask {

    private static final String SKIPPED = "";
    private static final String NOT_SEEN = "not_seen";

    @Override
    public String title(Surroundings around) {
        return around.say("form.visit.new", station.station().name());
    }

    @Override
    public Form form(Surroundings around) {
        Build build = new Build(around)
                .day("on", "form.visit.on", around.today().toString())
                .text("by", "form.visit.by", around.keeper())
                .maybe("water", "form.visit.water", "water", WaterLevel.class, Optional.empty());
        List<PartRecord> parts = station.parts();
        for (int i = 0; i < parts.size(); i++) {
            String label = around.say(
                    "form.visit.found",
                    parts.get(i).part().label(),
                    Looks.condition(around, parts.get(i).state().condition()));
            build.quick("found" + i, label, foundOptions(), foundLabels(around), SKIPPED);
        }
        for (int i = 0; i < parts.size(); i++) {
            String part = parts.get(i).part().label();
            build.options("left" + i, around.say("form.visit.left", part), leftOptions(), leftLabels(around), SKIPPED);
            build.options("work" + i, around.say("form.visit.work", part), workOptions(), workLabels(around), SKIPPED);
            build.labelled("note" + i, around.say("form.visit.note", part), around.say("form.visit.note_help"));
        }
        return Form.of(build.done()).focusedOn("found0");
    }

    private static List<String> foundOptions() {
        List<String> options = new ArrayList<>(List.of(SKIPPED));
        options.addAll(keys(Condition.values()));
        options.add(NOT_SEEN);
        return options;
    }

    private static List<String> foundLabels(Surroundings around) {
        List<String> labels = new ArrayList<>(List.of(around.say("form.visit.skipped")));
        Arrays.stream(Condition.values()).forEach(one -> labels.add(Looks.word(around, "condition", one)));
        labels.add(around.say("condition.not_seen"));
        return labels;
    }

    private static List<String> leftOptions() {
        List<String> options = new ArrayList<>(List.of(SKIPPED));
        options.addAll(keys(Condition.values()));
        return options;
    }

    private static List<String> leftLabels(Surroundings around) {
        List<String> labels = new ArrayList<>(List.of(around.say("form.visit.as_found")));
        Arrays.stream(Condition.values()).forEach(one -> labels.add(Looks.word(around, "condition", one)));
        return labels;
    }

    private static List<String> workOptions() {
        List<String> options = new ArrayList<>(List.of(SKIPPED));
        options.addAll(keys(Work.values()));
        return options;
    }

    private static List<String> workLabels(Surroundings around) {
        List<String> labels = new ArrayList<>(List.of(around.say("form.visit.no_work")));
        Arrays.stream(Work.values()).forEach(one -> labels.add(Looks.word(around, "work", one)));
        return labels;
    }

    private static List<String> keys(Enum<?>[] words) {
        return Arrays.stream(words)
                .map(word -> word.name().toLowerCase(Locale.ROOT))
                .toList();
    }

    @Override
    public String refusal(Filled filled, Surroundings around) {
        boolean any = false;
        for (int i = 0; i < station.parts().size(); i++) {
            String found = filled.text("found" + i);
            boolean more = !filled.text("left" + i).isEmpty()
                    || !filled.text("work" + i).isEmpty();
            String label = station.parts().get(i).part().label();
            if (found.equals(NOT_SEEN) && more) {
                return around.say("form.visit.not_seen_but_more", label);
            }
            if (found.isEmpty() && (more || !filled.text("note" + i).isEmpty())) {
                return around.say("form.visit.skipped_but_more", label);
            }
            any = any || !found.isEmpty();
        }
        return any ? "" : around.say("form.visit.empty");
    }

    @Override
    public Ask ask(Filled filled, Surroundings around) {
        List<Inspection> inspections = new ArrayList<>();
        for (int i = 0; i < station.parts().size(); i++) {
            if (filled.text("found" + i).isEmpty()) {
                continue;
            }
            inspections.add(new Inspection(
                    station.parts().get(i).part().uid(),
                    PartialDate.parse(filled.text("on")),
                    filled.text("by"),
                    filled.word("found" + i, Condition.class),
                    filled.word("left" + i, Condition.class),
                    filled.word("water", WaterLevel.class),
                    filled.word("work" + i, Work.class).stream().toList(),
                    filled.text("note" + i)));
        }
        return new Ask.AddInspections(inspections);
    }
}
