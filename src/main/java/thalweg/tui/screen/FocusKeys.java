package thalweg.tui.screen;

import java.util.List;
import thalweg.tui.core.Binding;
import thalweg.tui.core.Key;
import thalweg.tui.core.Step;
import thalweg.tui.core.Surroundings;

/** The keys that move the focus of a rig, by a little and by more. */
final class FocusKeys {

    private static final double FINE_METRES = 0.01;
    private static final double COARSE_METRES = 0.1;

    /** What moving it comes to. */
    @FunctionalInterface
    interface Move {
        Step by(double across, double up);
    }

    private FocusKeys() {}

    /**
     * @param none whether there is nothing whose focus could be moved
     */
    static List<Binding> of(Surroundings around, Move move, boolean none) {
        return List.of(
                fine(Key.Named.LEFT, "key.focus_left", move, -1, 0, none, around),
                fine(Key.Named.RIGHT, "key.focus_right", move, 1, 0, none, around),
                fine(Key.Named.UP, "key.focus_up", move, 0, 1, none, around),
                fine(Key.Named.DOWN, "key.focus_down", move, 0, -1, none, around),
                far(Key.Named.LEFT, 'h', "key.focus_left_far", move, -1, 0, none, around),
                far(Key.Named.RIGHT, 'l', "key.focus_right_far", move, 1, 0, none, around),
                far(Key.Named.UP, 'k', "key.focus_up_far", move, 0, 1, none, around),
                far(Key.Named.DOWN, 'j', "key.focus_down_far", move, 0, -1, none, around));
    }

    private static Binding fine(
            Key.Named key, String words, Move move, int across, int up, boolean none, Surroundings around) {
        return Binding.of(key, around.say(words), () -> move.by(across * FINE_METRES, up * FINE_METRES))
                .unless(none, around.say("rig.nothing"))
                .quiet();
    }

    private static Binding far(
            Key.Named key,
            char letter,
            String words,
            Move move,
            int across,
            int up,
            boolean none,
            Surroundings around) {
        return Binding.of(Key.shift(key), around.say(words), () -> move.by(across * COARSE_METRES, up * COARSE_METRES))
                .or(Key.of(letter))
                .unless(none, around.say("rig.nothing"))
                .quiet();
    }
}
