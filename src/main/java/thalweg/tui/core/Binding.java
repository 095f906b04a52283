package thalweg.tui.core;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * What a key does on a screen.
 *
 * @param keys the first is shown, the others do the same
 * @param label what it does, in a word or two
 * @param action the step that follows
 * @param refusal why it cannot be done now, if it cannot
 * @param atFoot whether it is worth a place in the foot line
 */
public record Binding(List<Key> keys, String label, Supplier<Step> action, Optional<String> refusal, boolean atFoot) {

    public Binding {
        keys = List.copyOf(keys);
        if (keys.isEmpty() || label.isBlank()) {
            throw new IllegalArgumentException("a binding has a key and says what it does");
        }
    }

    /** A key and what it does. */
    public static Binding of(Key key, String label, Supplier<Step> action) {
        return new Binding(List.of(key), label, action, Optional.empty(), true);
    }

    /** A named key and what it does. */
    public static Binding of(Key.Named key, String label, Supplier<Step> action) {
        return of(Key.of(key), label, action);
    }

    /** The same under further keys. */
    public Binding or(Key... others) {
        List<Key> all = new ArrayList<>(keys);
        all.addAll(List.of(others));
        return new Binding(all, label, action, refusal, atFoot);
    }

    /** The same, refused with that sentence where the condition holds. */
    public Binding unless(boolean condition, String sentence) {
        return condition ? new Binding(keys, label, action, Optional.of(sentence), atFoot) : this;
    }

    /** The same, shown in the help only. */
    public Binding quiet() {
        return new Binding(keys, label, action, refusal, false);
    }
}
