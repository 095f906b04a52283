package thalweg.tui.shell;

import java.util.Arrays;
import java.util.List;
import thalweg.tui.core.Binding;
import thalweg.tui.core.Screen;
import thalweg.tui.core.Surroundings;

/** The keys that every screen has unless it gives them another meaning. */
public final class KeysEverywhere {

    private KeysEverywhere() {}

    /**
     * The keys in their order.
     *
     * @param screen on which nothing is being written
     */
    public static List<Binding> of(Screen screen, Surroundings around) {
        return Arrays.stream(Globals.values())
                .map(global -> global.binding(around, screen))
                .toList();
    }
}
