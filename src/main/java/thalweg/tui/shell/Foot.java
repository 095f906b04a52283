package thalweg.tui.shell;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import thalweg.text.Width;
import thalweg.tui.core.Binding;
import thalweg.tui.core.Canvas;
import thalweg.tui.core.Key;
import thalweg.tui.core.Screen;
import thalweg.tui.core.Step;
import thalweg.tui.core.Style;
import thalweg.tui.core.Surroundings;

/**
 * The line at the foot that says what keys do here. The way to the help comes first and is never cut off; the others go
 * in order as far as there is room.
 *
 * @param hints from left to right, the first at column 0; at least one
 */
record Foot(List<Hint> hints) {

    private static final int GAP = 2;

    /** A key with a word for what it does, from that column on. */
    private record Hint(int column, Key key, String label) {

        int width() {
            return Width.of(key.print()) + 1 + Width.of(label);
        }

        boolean covers(int pressed) {
            return pressed >= column && pressed < column + width();
        }
    }

    Foot {
        hints = List.copyOf(hints);
    }

    /** A notice that fits beside the way to the help takes the room of the others; a longer one stands above them. */
    static Foot of(Screen screen, Optional<Step.Notice> notice, Surroundings around) {
        Key help = screen.writing() ? Key.of(Key.Named.F1) : Key.of('?');
        Foot foot = new Foot(List.of(new Hint(0, help, around.say("foot.help"))));
        if (notice.filter(text -> Surface.fits(text, foot.end(), around.columns()))
                .isPresent()) {
            return foot;
        }
        return foot.with(screen, around);
    }

    private Foot with(Screen screen, Surroundings around) {
        Foot foot = this;
        for (Binding binding : screen.bindings(around)) {
            if (binding.atFoot() && binding.refusal().isEmpty()) {
                foot = foot.with(binding.keys().get(0), binding.label(), around.columns());
            }
        }
        return foot;
    }

    static Foot ofKeyList(Surroundings around) {
        Hint close = new Hint(0, Key.of(Key.Named.ESCAPE), around.say("foot.close"));
        return new Foot(List.of(close)).with(Key.of(Key.Named.ENTER), around.say("foot.do"), around.columns());
    }

    private Foot with(Key key, String label, int columns) {
        Hint hint = new Hint(end(), key, label);
        if (hint.column() + hint.width() > columns) {
            return this;
        }
        List<Hint> more = new ArrayList<>(hints);
        more.add(hint);
        return new Foot(more);
    }

    private int end() {
        Hint last = hints.get(hints.size() - 1);
        return last.column() + last.width() + GAP;
    }

    /** The key whose hint is at that column. */
    Optional<Key> at(int column) {
        return hints.stream().filter(hint -> hint.covers(column)).map(Hint::key).findFirst();
    }

    /** Draws the line into the last row and returns the column after it. */
    int draw(Canvas canvas) {
        int row = canvas.rows() - 1;
        for (Hint hint : hints) {
            int after = canvas.put(row, hint.column(), hint.key().print(), Style.KEY);
            canvas.put(row, after + 1, hint.label(), Style.NORMAL);
        }
        return end();
    }
}
