package thalweg.tui.widget;

import java.util.List;
import thalweg.tui.core.Binding;
import thalweg.tui.core.Canvas;
import thalweg.tui.core.Glyphs;
import thalweg.tui.core.Key;
import thalweg.tui.core.Step;
import thalweg.tui.core.Style;
import thalweg.tui.core.Surroundings;

/** Draws lists and moves about in them, the same way on every screen. */
public final class Lists {

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

    /** Draws the rows that fit, the chosen one marked by a sign and by style, and a scroll bar where there are more. */
    public static void draw(
            Canvas canvas, ListState state, int size, boolean focused, Surroundings around, RowPainter painter) {
        ListState shown = state.shownIn(canvas.rows(), size);
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

    /** Draws how much of something long is in view, at the right edge. */
    static void scrollBar(Canvas canvas, int top, int size, Glyphs glyphs) {
        int height = canvas.rows();
        int thumb = Math.max(1, height * height / Math.max(1, size));
        int room = Math.max(1, size - height);
        int from = (int) Math.round((double) top * (height - thumb) / room);
        for (int row = 0; row < height; row++) {
            boolean inside = row >= from && row < from + thumb;
            String sign = glyphs == Glyphs.ASCII ? inside ? "#" : "|" : inside ? "█" : "│";
            canvas.put(row, canvas.columns() - 1, sign, Style.FAINT);
        }
    }

    /** The keys that move about in a list. */
    public static List<Binding> bindings(ListState state, int size, int page, Surroundings around, Mover mover) {
        boolean empty = size == 0;
        String nothing = around.say("list.empty");
        return List.of(
                Binding.of(Key.Named.UP, around.say("key.up"), () -> mover.to(state.moved(-1, size)))
                        .or(Key.of('k'))
                        .unless(empty, nothing)
                        .quiet(),
                Binding.of(Key.Named.DOWN, around.say("key.down"), () -> mover.to(state.moved(1, size)))
                        .or(Key.of('j'))
                        .unless(empty, nothing)
                        .quiet(),
                Binding.of(Key.Named.PAGE_UP, around.say("key.page_up"), () -> mover.to(state.moved(-page, size)))
                        .unless(empty, nothing)
                        .quiet(),
                Binding.of(Key.Named.PAGE_DOWN, around.say("key.page_down"), () -> mover.to(state.moved(page, size)))
                        .unless(empty, nothing)
                        .quiet(),
                Binding.of(Key.Named.HOME, around.say("key.first"), () -> mover.to(state.at(0, size)))
                        .unless(empty, nothing)
                        .quiet(),
                Binding.of(Key.Named.END, around.say("key.last"), () -> mover.to(state.at(size - 1, size)))
                        .unless(empty, nothing)
                        .quiet());
    }
}
