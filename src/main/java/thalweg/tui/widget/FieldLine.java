package thalweg.tui.widget;

import thalweg.text.Width;
import thalweg.tui.core.Canvas;
import thalweg.tui.core.Style;

/** Draws a text that is edited in one line; a text that is longer than the line is shown around the cursor. */
public final class FieldLine {

    private FieldLine() {}

    /**
     * Draws into the first row.
     *
     * @param focused whether the cursor is shown; then the whole line is marked as the place where letters go
     */
    public static void draw(Canvas canvas, TextField field, boolean focused, Style style) {
        if (focused) {
            canvas.fill(0, style);
        }
        int cursor = focused ? Width.of(field.before()) : 0;
        int shift = Math.max(0, cursor - canvas.columns() + 1);
        canvas.put(0, -shift, field.text(), style);
        if (!focused && Width.of(field.text()) > canvas.columns()) {
            canvas.fit(0, 0, canvas.columns(), field.text(), style);
        }
        if (focused) {
            canvas.cursor(0, cursor - shift);
        }
    }
}
