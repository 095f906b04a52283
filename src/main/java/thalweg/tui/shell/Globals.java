package thalweg.tui.shell;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import thalweg.tui.core.Binding;
import thalweg.tui.core.Key;
import thalweg.tui.core.Screen;
import thalweg.tui.core.Step;
import thalweg.tui.core.Surroundings;

/** What keys do on every screen that does not give them another meaning. */
enum Globals {
    HELP(Key.of('?'), Key.of(Key.Named.F1), Key.of(':')),
    UNITS(Key.of(Key.Named.F9), Key.of('u')),
    QUIT(Key.of('q'), Key.of(Key.Named.F10), Key.ctrl('q'));

    // The list is made by List.of and cannot change.
    @SuppressWarnings("ImmutableEnumChecker")
    private final List<Key> keys;

    Globals(Key... keys) {
        this.keys = List.of(keys);
    }

    static Optional<Globals> of(Key key) {
        return Arrays.stream(values()).filter(one -> one.keys.contains(key)).findFirst();
    }

    /** As a line of the list of keys, without those that write into a field; the shell itself does what it says. */
    Binding binding(Surroundings around, Screen screen) {
        String label = around.say("key." + name().toLowerCase(Locale.ROOT));
        List<Key> meant =
                keys.stream().filter(key -> !(screen.writing() && key.writes())).toList();
        return new Binding(meant, label, () -> Step.stay(screen), Optional.empty(), false);
    }

    /** The screen's own bindings and those that go everywhere, for the list of keys. */
    static List<Binding> all(Screen screen, Surroundings around) {
        List<Binding> all = new ArrayList<>(screen.bindings(around));
        for (Globals global : values()) {
            all.add(global.binding(around, screen));
        }
        return all;
    }
}
