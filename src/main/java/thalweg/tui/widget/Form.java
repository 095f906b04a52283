package thalweg.tui.widget;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import thalweg.tui.core.Key;
import thalweg.tui.core.Surroundings;

/**
 * Fields to fill in, one of which has the focus.
 *
 * @param fields in order, at least one
 * @param focus index of the field with the focus
 * @param touched whether anything was entered
 * @param refused whether saving was tried in vain, so that every fault is shown
 * @param letter by which the choice with the focus was made last; empty where the last key was none
 * @param hidden keys of fields that have no say as things are: they keep what is in them, but are neither shown nor
 *     checked, and never have the focus
 */
public record Form(List<Field> fields, int focus, boolean touched, boolean refused, String letter, Set<String> hidden) {

    public Form {
        fields = List.copyOf(fields);
        hidden = Set.copyOf(hidden);
        if (focus < 0
                || focus >= fields.size()
                || hidden.contains(fields.get(focus).key())) {
            throw new IllegalArgumentException("one of the fields that are shown has the focus");
        }
    }

    /** A form in which nothing was entered yet. */
    public static Form of(List<Field> fields) {
        return new Form(fields, 0, false, false, "", Set.of());
    }

    /** Whether the field at that index is shown. */
    public boolean shows(int index) {
        return !hidden.contains(fields.get(index).key());
    }

    /** The same with those fields hidden and all others shown; the one with the focus is not among them. */
    public Form hiding(Set<String> keys) {
        return new Form(fields, focus, touched, refused, letter, keys);
    }

    /** The field with the focus. */
    public Field focused() {
        return fields.get(focus);
    }

    /** What is in the field of that key. */
    public String value(String key) {
        return field(key)
                .orElseThrow(() -> new IllegalArgumentException("the form has no field " + key))
                .value();
    }

    /** The first fault, if there is one. */
    public Optional<String> fault(Surroundings around) {
        return fields.stream()
                .filter(field -> !hidden.contains(field.key()))
                .flatMap(field -> field.fault().map(fault -> around.labelled(field.label(), fault)).stream())
                .findFirst();
    }

    /** The form at its first fault, every fault shown. */
    public Form atFault() {
        for (int i = 0; i < fields.size(); i++) {
            if (shows(i) && fields.get(i).fault().isPresent()) {
                return new Form(fields, i, touched, true, "", hidden);
            }
        }
        return this;
    }

    /** The focus moved by so many of the fields that are shown, around the end. */
    public Form moved(int by) {
        int[] shown = IntStream.range(0, fields.size()).filter(this::shows).toArray();
        int at = Arrays.binarySearch(shown, focus);
        return new Form(fields, shown[Math.floorMod(at + by, shown.length)], touched, refused, "", hidden);
    }

    /** The form after a key that no binding took. */
    public Form after(Key key) {
        Field field = focused();
        boolean many = field.manyLines();
        if (key.named() == Key.Named.TAB) {
            return moved(key.shift() ? -1 : 1);
        }
        if (!many && (key.named() == Key.Named.ENTER || key.named() == Key.Named.DOWN)) {
            return moved(1);
        }
        if (!many && key.named() == Key.Named.UP) {
            return moved(-1);
        }
        if (field.input() instanceof Field.Input.Chosen chosen) {
            return switch (key.named()) {
                case LEFT -> entered(field.with(chosen.turned(-1)));
                case RIGHT -> entered(field.with(chosen.turned(1)));
                case CHARACTER -> key.writes() ? chosenBy(field, chosen, key) : this;
                default -> this;
            };
        }
        if (field.input() instanceof Field.Input.Typed typed) {
            TextField after = typed.field().after(key);
            if (many && after.equals(typed.field()) && key.named() == Key.Named.DOWN) {
                return moved(1);
            }
            if (many && after.equals(typed.field()) && key.named() == Key.Named.UP) {
                return moved(-1);
            }
            return withTyped(field, typed, after);
        }
        return this;
    }

    /** The form after text was pasted. */
    public Form pasted(String text) {
        Field field = focused();
        return field.input() instanceof Field.Input.Typed typed
                ? withTyped(field, typed, typed.field().inserted(text))
                : this;
    }

    private Form withTyped(Field field, Field.Input.Typed before, TextField after) {
        boolean same = after.text().equals(before.field().text());
        Form changed = entered(field.with(new Field.Input.Typed(after)));
        return same ? new Form(changed.fields, focus, touched, refused, "", hidden) : changed;
    }

    /**
     * Space turns. A letter goes to the next option that begins with it; where the one that is shown begins with it,
     * the first press keeps that one, for it is what was asked for.
     */
    private Form chosenBy(Field field, Field.Input.Chosen before, Key key) {
        if (key.codePoint() == ' ') {
            return entered(field.with(before.turned(1)));
        }
        String pressed = key.text();
        boolean again = letter.equalsIgnoreCase(pressed);
        if (before.begins(pressed) && !again) {
            Form kept = new Form(fields, focus, touched, refused, pressed, hidden);
            return before.movesOn() ? kept.moved(1) : kept;
        }
        for (int step = 1; step < before.options().size(); step++) {
            Field.Input.Chosen next = before.turned(step);
            if (next.begins(pressed)) {
                Form changed = entered(field.with(next));
                return before.movesOn()
                        ? changed.moved(1)
                        : new Form(changed.fields, focus, true, refused, pressed, hidden);
            }
        }
        return this;
    }

    /** The form with the focus on the field of that key. */
    public Form focusedOn(String key) {
        for (int i = 0; i < fields.size(); i++) {
            if (shows(i) && fields.get(i).key().equals(key)) {
                return new Form(fields, i, touched, refused, "", hidden);
            }
        }
        return this;
    }

    private Form entered(Field field) {
        List<Field> changed = new ArrayList<>(fields);
        changed.set(focus, field);
        return new Form(changed, focus, true, refused, "", hidden);
    }

    /** The same with another field in place of the one of that key. */
    public Form with(String key, Field.Input input) {
        List<Field> changed = new ArrayList<>();
        fields.forEach(field -> changed.add(field.key().equals(key) ? field.with(input) : field));
        return new Form(changed, focus, true, refused, letter, hidden);
    }

    /** The same with another field in place of the one of its key. */
    public Form with(Field other) {
        List<Field> changed = new ArrayList<>();
        fields.forEach(field -> changed.add(field.key().equals(other.key()) ? other : field));
        return new Form(changed, focus, touched, refused, letter, hidden);
    }

    /** The field of that key, if there is one. */
    public Optional<Field> field(String key) {
        return fields.stream().filter(field -> field.key().equals(key)).findFirst();
    }
}
