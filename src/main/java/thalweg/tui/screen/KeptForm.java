package thalweg.tui.screen;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import thalweg.draft.Draft;
import thalweg.draft.DraftEntry;
import thalweg.draft.DraftKey;
import thalweg.tui.core.Surroundings;
import thalweg.tui.widget.Field;
import thalweg.tui.widget.Form;
import thalweg.tui.widget.TextField;

/** Makes drafts of forms, and forms of drafts. */
final class KeptForm {

    private KeptForm() {}

    /**
     * A form that was filled from a draft.
     *
     * @param form with what was entered
     * @param changed fields of what is edited that are otherwise than when the draft was begun: "Height: 18 m, was 20 m"
     * @param left entries for which there is no field any more, each with its label
     */
    record Refilled(Form form, List<String> changed, List<String> left) {

        Refilled {
            changed = List.copyOf(changed);
            left = List.copyOf(left);
        }
    }

    /** What was entered so far. */
    static Draft draft(DraftKey key, String title, Form first, Form last, Surroundings around) {
        return new Draft(key, title, "", around.units(), last.focused().key(), entries(first, last), Optional.empty());
    }

    /** The fields of a form beside what they held at first. */
    static Map<String, DraftEntry> entries(Form first, Form last) {
        Map<String, DraftEntry> entries = new LinkedHashMap<>();
        for (Field field : last.fields()) {
            String was = first.field(field.key()).map(Field::value).orElse("");
            String shown = field.input() instanceof Field.Input.Chosen chosen
                    ? chosen.labels().get(chosen.chosen())
                    : field.value();
            entries.put(field.key(), new DraftEntry(field.label(), was, field.value(), shown));
        }
        return entries;
    }

    /**
     * The form with what was entered into it earlier. Of something new, everything is as it was left: the date that
     * stood there, too. Of something that is there, what nobody touched is as it is now.
     *
     * @param opened as the form opens now, in any units
     * @param then as it opens now in the units of the draft
     */
    static Refilled refilled(Form opened, Form then, Draft draft, Surroundings around) {
        return refilled(opened, then, draft, draft.key().isNew(), around);
    }

    /**
     * The same.
     *
     * @param all whether everything is as it was left; else only what was entered
     */
    static Refilled refilled(Form opened, Form then, Draft draft, boolean all, Surroundings around) {
        Form form = opened;
        List<String> changed = new ArrayList<>();
        List<String> left = new ArrayList<>();
        for (Map.Entry<String, DraftEntry> one : draft.fields().entrySet()) {
            String key = one.getKey();
            DraftEntry entry = one.getValue();
            if (!all && then.field(key).isPresent() && !then.value(key).equals(entry.was())) {
                changed.add(changed(entry, then.value(key), around));
            }
            if (all || entry.changed()) {
                Optional<Field> field = form.field(key).flatMap(known -> with(known, entry.is()));
                form = field.isPresent() ? form.with(field.get()) : form;
                if (field.isEmpty() && entry.changed()) {
                    left.add(around.say("draft.entry", entry.label(), entry.shown()));
                }
            }
        }
        return new Refilled(touched(form, draft.focus()), changed, left);
    }

    private static String changed(DraftEntry entry, String now, Surroundings around) {
        return around.say("draft.field_changed", entry.label(), shown(now, around), shown(entry.was(), around));
    }

    private static String shown(String value, Surroundings around) {
        return value.isEmpty() ? around.say("draft.nothing") : value;
    }

    /** The field with that in it; empty where it cannot hold that. */
    private static Optional<Field> with(Field field, String value) {
        if (field.input() instanceof Field.Input.Typed typed) {
            int longest = typed.field().longest();
            TextField text = typed.field().manyLines() ? TextField.lines(value, longest) : TextField.of(value, longest);
            return Optional.of(field.with(new Field.Input.Typed(text)));
        }
        if (field.input() instanceof Field.Input.Chosen chosen) {
            int at = chosen.options().indexOf(value);
            return at < 0
                    ? Optional.empty()
                    : Optional.of(field.with(
                            new Field.Input.Chosen(chosen.options(), chosen.labels(), at, chosen.movesOn())));
        }
        return Optional.empty();
    }

    private static Form touched(Form form, String focus) {
        return new Form(form.fields(), form.focus(), true, form.refused(), "", form.hidden()).focusedOn(focus);
    }

    /** How old a draft is, in words. */
    static String age(long seconds, Surroundings around) {
        long minutes = seconds / 60;
        if (minutes == 0) {
            return around.say("draft.age.now");
        }
        if (minutes < 120) {
            return around.phrases().count("draft.age.minutes", minutes);
        }
        long hours = minutes / 60;
        return hours < 48
                ? around.phrases().count("draft.age.hours", hours)
                : around.phrases().count("draft.age.days", hours / 24);
    }
}
