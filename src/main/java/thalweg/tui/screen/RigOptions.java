package thalweg.tui.screen;

import java.util.HashSet;
import java.util.Set;
import java.util.stream.Collectors;
import thalweg.rig.RigDraft;
import thalweg.tui.core.Key;
import thalweg.tui.core.Surroundings;
import thalweg.tui.widget.Field;
import thalweg.tui.widget.Form;

/**
 * The form of a rig while it is open. What a rig begins with is not stated by looking at it: a field counts once what is in
 * it was changed, or confirmed with Enter.
 *
 * @param first as it was opened
 * @param last as it is now
 * @param open keys of the fields in which something stands that nobody has stated
 */
record RigOptions(Form first, Form last, Set<String> open) {

    RigOptions {
        open = Set.copyOf(open);
    }

    /** The form as it opens. */
    static RigOptions of(RigDraft draft, Set<StartValue> starts, Surroundings around) {
        Form form = RigForm.of(draft, around);
        Set<String> open = starts.stream()
                .flatMap(start -> start.fields().stream())
                .collect(Collectors.toCollection(HashSet::new));
        open.addAll(RigForm.unstated(draft));
        return new RigOptions(form, form, open).marked(around);
    }

    /** What was filled in, beside what was there. */
    Filled filled() {
        return new Filled(first, last);
    }

    /** Whether somebody stated what is in that field, now or earlier. */
    boolean states(String field) {
        return !open.contains(field);
    }

    /** What nobody has stated so far. */
    Set<StartValue> starts() {
        return open.stream().flatMap(field -> StartValue.in(field).stream()).collect(Collectors.toSet());
    }

    /** The same at another field, or with its faults shown. */
    RigOptions with(Form other) {
        return new RigOptions(first, other, open);
    }

    /** The form after a key that no binding took. */
    RigOptions after(Key key, Surroundings around) {
        return entered(last.after(key), key.named() == Key.Named.ENTER, around);
    }

    /** The form after text was pasted. */
    RigOptions pasted(String text, Surroundings around) {
        return entered(last.pasted(text), false, around);
    }

    /**
     * The same with what was entered earlier.
     *
     * @param filled with that
     * @param unstated keys of the fields that nobody had stated then
     */
    RigOptions refilled(Form filled, Set<String> unstated, Surroundings around) {
        return new RigOptions(first, RigForm.fitted(filled), unstated).marked(around);
    }

    private RigOptions entered(Form next, boolean confirmed, Surroundings around) {
        String field = last.focused().key();
        boolean changed = !next.value(field).equals(last.value(field));
        Set<String> left = new HashSet<>(open);
        if (changed || confirmed) {
            left.remove(field);
            StartValue.in(field).ifPresent(start -> left.removeAll(start.fields()));
        }
        return new RigOptions(first, RigForm.adapted(last, next, around), left).marked(around);
    }

    /** Labels and help say of what nobody has stated that it is so. */
    private RigOptions marked(Surroundings around) {
        Form marked = last;
        for (Field plain : first.fields()) {
            Field field = LoadFields.explained(last.field(plain.key()).orElseThrow(), plain.help(), around);
            marked = marked.with(
                    open.contains(plain.key())
                            ? field.withLabel(around.say("rig_form.start", plain.label()))
                                    .withHelp(around.say("rig_form.confirm", field.help()))
                            : field.withLabel(plain.label()));
        }
        return new RigOptions(first, marked, open);
    }
}
