package thalweg.timeline;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import thalweg.logbook.Condition;
import thalweg.logbook.ConditionWords;
import thalweg.logbook.Inspection;
import thalweg.logbook.Work;
import thalweg.text.Phrases;

/** What the signs of a timeline mean, and the whole of it in words. */
final class TimelineWords {

    private final Phrases phrases;

    TimelineWords(Phrases phrases) {
        this.phrases = phrases;
    }

    /** The meaning of each sign that is there, and of no other. */
    List<String> legend(TimelineLayout layout) {
        String signs = layout.rows().stream()
                .flatMap(row -> row.signs().stream())
                .map(Sign::text)
                .collect(Collectors.joining(" "));
        List<String> legend = new ArrayList<>();
        Arrays.stream(Condition.values())
                .map(Optional::of)
                .filter(condition -> signs.contains(ConditionWords.mark(condition, phrases)))
                .forEach(condition -> legend.add(ConditionWords.told(condition, phrases)));
        String notSeen = phrases.say("timeline.mark.not_seen");
        if (signs.contains(notSeen)) {
            legend.add(notSeen + " " + phrases.say("condition.not_seen"));
        }
        if (signs.contains(Sign.MENDED)) {
            legend.add(phrases.say("timeline.legend.mended", Sign.MENDED));
        }
        if (signs.contains(Sign.REPLACED)) {
            legend.add(phrases.say("timeline.legend.replaced", Sign.REPLACED));
        }
        if (signs.contains(Sign.SEVERAL)) {
            legend.add(phrases.say("timeline.legend.several", Sign.SEVERAL));
        }
        if (layout.rows().stream().anyMatch(row -> !row.there().isEmpty())) {
            legend.add(phrases.say("timeline.legend.there"));
        }
        if (layout.rows().stream().anyMatch(row -> !row.vague().isEmpty())) {
            legend.add(phrases.say("timeline.legend.vague"));
        }
        if (layout.rows().stream().anyMatch(TimelineLayout::showsBefore)) {
            legend.add(phrases.say(
                    "timeline.legend.before",
                    phrases.say("timeline.mark.before"),
                    layout.axis().first().getYear()));
        }
        return legend;
    }

    /** Everything that the picture says, part by part. */
    String told(Timeline timeline) {
        return phrases.count("timeline.told", timeline.lines().size()) + " "
                + timeline.lines().stream().map(this::told).collect(Collectors.joining(" "));
    }

    /** Everything that was found on one part, oldest first. */
    String told(PartLine line) {
        if (line.inspections().isEmpty()) {
            return phrases.say(
                    "timeline.told.part", line.part().label(), ConditionWords.told(Optional.empty(), phrases));
        }
        String all = line.inspections().stream().map(this::told).collect(Collectors.joining(", "));
        return phrases.say("timeline.told.part", line.part().label(), all);
    }

    private String told(Inspection inspection) {
        String found = Stream.of(inspection.found(), inspection.left())
                .flatMap(Optional::stream)
                .distinct()
                .map(condition -> ConditionWords.told(Optional.of(condition), phrases))
                .collect(Collectors.joining(" " + Sign.MENDED + " "));
        String work = inspection.work().contains(Work.REPLACED) ? " " + phrases.say("timeline.told.replaced") : "";
        return inspection.on().print() + " "
                + (inspection.wasSeen() ? found : phrases.say("condition.not_seen"))
                + work;
    }
}
