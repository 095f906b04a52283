package thalweg.tui.screen;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import thalweg.fault.Sentence;
import thalweg.ledger.Uid;
import thalweg.logbook.Condition;
import thalweg.logbook.ConditionWords;
import thalweg.logbook.Inspection;
import thalweg.logbook.PartRecord;
import thalweg.logbook.WaterLevel;
import thalweg.logbook.Work;
import thalweg.route.PartialDate;
import thalweg.tui.core.Surroundings;
import thalweg.tui.widget.Form;

/**
 * The fields of a form in which many parts are inspected: first the condition of each, one letter a part; then, part by
 * part, what else there is to say.
 */
final class VisitFields {

    private static final String FOUND = "found";
    private static final String LEFT = "left";
    private static final String WORK = "work";
    private static final String NOTE = "note";
    private static final String PHOTO = "photo";
    private static final List<String> MORE = List.of(LEFT, WORK, NOTE, PHOTO);

    private VisitFields() {}

    /**
     * A part that is inspected.
     *
     * @param record the part
     * @param label by which the form calls it
     */
    record Inspected(PartRecord record, String label) {}

    /** By the part and not by its number: a draft must find it again where parts were added or moved meanwhile. */
    private static String key(String what, Inspected part) {
        return what + "-" + part.record().part().uid().text();
    }

    /** The key of the field in which the condition of that part is entered. */
    static String found(Inspected part) {
        return key(FOUND, part);
    }

    static void add(Build build, List<Inspected> parts, Surroundings around) {
        for (Inspected part : parts) {
            String label = around.say(
                    "form.visit.found",
                    part.label(),
                    ConditionWords.told(part.record().state().condition(), around.phrases()));
            build.quick(
                    found(part),
                    label,
                    FoundChoices.found(),
                    FoundChoices.foundLabels(around.say("form.visit.skipped"), around),
                    FoundChoices.SKIPPED);
        }
        parts.forEach(part -> more(build, part, around));
    }

    private static void more(Build build, Inspected part, Surroundings around) {
        String label = part.label();
        build.options(
                        key(LEFT, part),
                        around.say("form.visit.left", label),
                        FoundChoices.left(),
                        FoundChoices.leftLabels(around),
                        FoundChoices.SKIPPED)
                .options(
                        key(WORK, part),
                        around.say("form.visit.work", label),
                        FoundChoices.work(),
                        FoundChoices.workLabels(around),
                        FoundChoices.SKIPPED)
                .labelled(key(NOTE, part), around.say("form.visit.note", label), around.say("form.visit.note_help"))
                .labelled(key(PHOTO, part), around.say("form.visit.photo", label), around.say("form.visit.photo_help"));
    }

    /** The keys of what else there is to say of parts that have no entry. */
    static Set<String> withoutEntry(List<Inspected> parts, Form form) {
        Set<String> hidden = new HashSet<>();
        for (Inspected part : parts) {
            boolean said =
                    MORE.stream().anyMatch(what -> !form.value(key(what, part)).isEmpty());
            if (form.value(found(part)).isEmpty() && !said) {
                MORE.forEach(what -> hidden.add(key(what, part)));
            }
        }
        return hidden;
    }

    /** Why it cannot be saved as it is; empty text where it can. */
    static String refusal(List<Inspected> parts, Filled filled, Surroundings around) {
        boolean any = false;
        for (Inspected part : parts) {
            String why = refusal(part, filled, around);
            if (!why.isEmpty()) {
                return why;
            }
            any = any || !filled.text(found(part)).isEmpty();
        }
        return any ? "" : around.say("form.visit.empty");
    }

    private static String refusal(Inspected part, Filled filled, Surroundings around) {
        String found = filled.text(found(part));
        boolean more = !filled.text(key(LEFT, part)).isEmpty()
                || !filled.text(key(WORK, part)).isEmpty();
        boolean told = !filled.text(key(NOTE, part)).isEmpty()
                || !filled.text(key(PHOTO, part)).isEmpty();
        if (found.equals(FoundChoices.NOT_SEEN) && more) {
            return around.say("form.visit.not_seen_but_more", part.label());
        }
        if (found.isEmpty() && (more || told)) {
            return around.say("form.visit.skipped_but_more", part.label());
        }
        Optional<Sentence> unsaid = inspection(part, filled, Optional.empty()).unsaid();
        if (unsaid.isPresent()) {
            return around.labelled(part.label(), around.phrases().say(unsaid.get()));
        }
        Optional<Condition> now = filled.word(found(part), Condition.class);
        Optional<Condition> before = part.record().state().condition();
        boolean better = now.isPresent()
                && before.filter(last -> last.isWorseThan(now.get())).isPresent();
        boolean explained = !filled.text(key(NOTE, part)).isEmpty()
                || !filled.text(key(WORK, part)).isEmpty();
        return better && !explained
                ? around.say(
                        "form.visit.better",
                        part.label(),
                        Looks.word(around, "condition", before.orElseThrow()),
                        Looks.word(around, "condition", now.orElseThrow()))
                : "";
    }

    /**
     * What was found on the parts that have an entry.
     *
     * @param round to which it belongs, if to one that is there
     */
    static List<Ask.Found> found(List<Inspected> parts, Filled filled, Optional<Uid> round) {
        List<Ask.Found> found = new ArrayList<>();
        for (Inspected part : parts) {
            if (filled.text(found(part)).isEmpty()) {
                continue;
            }
            found.add(new Ask.Found(inspection(part, filled, round), filled.photos(key(PHOTO, part))));
        }
        return found;
    }

    private static Inspection inspection(Inspected part, Filled filled, Optional<Uid> round) {
        return new Inspection(
                part.record().part().uid(),
                PartialDate.parse(filled.text("on")),
                filled.text("by"),
                filled.word(found(part), Condition.class),
                filled.word(key(LEFT, part), Condition.class),
                filled.word("water", WaterLevel.class),
                filled.word(key(WORK, part), Work.class).stream().toList(),
                filled.text(key(NOTE, part)),
                round,
                List.of());
    }
}
