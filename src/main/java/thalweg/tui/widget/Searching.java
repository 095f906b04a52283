package thalweg.tui.widget;

import thalweg.tui.core.Canvas;
import thalweg.tui.core.Key;
import thalweg.tui.core.Style;
import thalweg.tui.core.Surroundings;

/**
 * The line in which words to find are typed.
 *
 * @param field the words
 * @param open whether it has the focus
 */
public record Searching(TextField field, boolean open) {

    private static final int LONGEST = 80;

    /** Nothing searched. */
    public static final Searching NONE = new Searching(TextField.of("", LONGEST), false);

    /** The words. */
    public String words() {
        return field.text();
    }

    /** With the focus. */
    public Searching opened() {
        return new Searching(field, true);
    }

    /** Without the focus, the words kept. */
    public Searching closed() {
        return new Searching(field, false);
    }

    /** After a key. The sign that opens the line, typed again out of habit, begins no word. */
    public Searching after(Key key) {
        if (words().isEmpty() && key.equals(Key.of('/'))) {
            return this;
        }
        return new Searching(field.after(key), open);
    }

    /** After text was pasted. */
    public Searching pasted(String text) {
        return new Searching(field.inserted(text), open);
    }

    /** Draws the line where it is open or holds words. */
    public void draw(Canvas canvas, int row, Surroundings around) {
        String sign = around.say("search.sign") + " ";
        int at = canvas.put(row, 0, sign, Style.KEY);
        FieldLine.draw(canvas.part(row, at, 1, canvas.columns() - at), field, open, open ? Style.FOCUS : Style.NORMAL);
    }
}
