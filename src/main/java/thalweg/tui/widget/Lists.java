package thalweg.tui.widget;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import thalweg.tui.core.Binding;
import thalweg.tui.core.Canvas;
import thalweg.tui.core.Glyphs;
import thalweg.tui.core.Key;
import thalweg.tui.core.Step;
import thalweg.tui.core.Style;
import thalweg.tui.core.Surroundings;

/** Draws lists and moves about in them, the same way on every screen. */
public final class Lists {

    private static final Map<Key.Named, String> MOVES = moves();

    /** Paints one row of a list. */
    @FunctionalInterface
    public interface RowPainter {
        /**
         * @param line one row high
         * @param index of the row in the list
         * @param style for its text
         */
        void paint(Canvas line, int index, Style style);
    }

    /** Gives the step after a move. */
    @FunctionalInterface
    public interface Mover {
        Step to(ListState state);
    }

    private Lists() {}

    private static Map<Key.Named, String> moves() {
        Map<Key.Named, String> moves = new LinkedHashMap<>();
        moves.put(Key.Named.UP, "key.up");
        moves.put(Key.Named.DOWN, "key.down");
        moves.put(Key.Named.PAGE_UP, "key.page_up");
        moves.put(Key.Named.PAGE_DOWN, "key.page_down");
        moves.put(Key.Named.HOME, "key.first");
        moves.put(Key.Named.END, "key.last");
        return Collections.unmodifiableMap(moves);
    }

    /** Draws the rows that fit, the chosen one marked by a sign and by style, and a scroll bar where there are more. */
    public static void draw(
            Canvas canvas, ListState state, int size, boolean focused, Surroundings around, RowPainter painter) {
        ListState shown = state.at(state.chosen(), size).shownIn(canvas.rows(), size);
        boolean bar = size > canvas.rows();
        int width = canvas.columns() - (bar ? 1 : 0);
        for (int row = 0; row < canvas.rows() && shown.top() + row < size; row++) {
            int index = shown.top() + row;
            boolean chosen = index == shown.chosen();
            Style style = chosen && focused ? Style.SELECTED : Style.NORMAL;
            Canvas line = canvas.part(row, 0, 1, width);
            line.fill(0, style);
            line.put(0, 0, chosen ? ">" : " ", style);
            painter.paint(line.part(0, 2, 1, width - 2), index, style);
            if (chosen && focused) {
                canvas.cursor(row, 0);
            }
        }
        if (bar) {
            scrollBar(canvas, shown.top(), size, around.glyphs());
        }
    }

    /**
     * Draws how much of something long is in view, at the right edge. It touches an end only where the end is in view.
     *
     * @param top the first line in view
     * @param size lines in all
     */
    static void scrollBar(Canvas canvas, int top, int size, Glyphs glyphs) {
        int height = canvas.rows();
        int thumb = Math.max(1, (int) Math.min(Math.max(1, height - 1), (long) height * height / Math.max(1, size)));
        int hidden = Math.max(1, size - height);
        int from = (int) Math.round((double) Math.min(top, hidden) * (height - thumb) / hidden);
        if (top > 0 && top < hidden) {
            from = Math.max(Math.min(1, height - thumb), Math.min(height - thumb - 1, from));
        }
        for (int row = 0; row < height; row++) {
            boolean inside = row >= from && row < from + thumb;
            String sign = glyphs == Glyphs.ASCII ? inside ? "#" : "|" : inside ? "█" : "│";
            canvas.put(row, canvas.columns() - 1, sign, Style.FAINT);
        }
    }

    /**
     * The list after a key, if it is one that moves about.
     *
     * @param size rows of the list
     * @param page rows that are in view, or fewer
     */
    public static Optional<ListState> moved(ListState state, Key key, int size, int page) {
        Optional<ListState> moved = switch (key.named()) {
            case UP -> Optional.of(state.moved(-1, size));
            case DOWN -> Optional.of(state.moved(1, size));
            case PAGE_UP -> Optional.of(state.moved(-page, size));
            case PAGE_DOWN -> Optional.of(state.moved(page, size));
            case HOME -> Optional.of(state.at(0, size));
            case END -> Optional.of(state.at(size - 1, size));
            default -> Optional.empty();
        };
        return moved.map(to -> to.shownIn(page, size));
    }

    /**
     * The keys that move about in a list.
     *
     * @param size rows of the list
     * @param page rows that are in view, or fewer
     */
    public static List<Binding> bindings(ListState state, int size, int page, Surroundings around, Mover mover) {
        boolean empty = size == 0;
        String nothing = around.say("list.empty");
        return MOVES.entrySet().stream()
                .map(move -> move(move.getKey(), around.say(move.getValue()), state, size, page, mover))
                .map(binding -> binding.unless(empty, nothing).quiet())
                .toList();
    }

    private static Binding move(Key.Named named, String label, ListState state, int size, int page, Mover mover) {
        Key key = Key.of(named);
        Binding binding = Binding.of(
                key, label, () -> mover.to(moved(state, key, size, page).orElseThrow()));
        return switch (named) {
            case UP -> binding.or(Key.of('k'));
            case DOWN -> binding.or(Key.of('j'));
            default -> binding;
        };
    }
}
