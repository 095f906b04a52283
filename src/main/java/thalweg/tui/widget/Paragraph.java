package thalweg.tui.widget;

import java.util.ArrayList;
import java.util.List;
import thalweg.text.Width;
import thalweg.tui.core.Canvas;
import thalweg.tui.core.Style;
import thalweg.tui.core.Surroundings;

/**
 * One paragraph of a text that scrolls.
 *
 * @param margin empty cells in front of every line
 * @param text of any length; wrapped where it is shown
 * @param style how it looks
 */
public record Paragraph(int margin, String text, Style style) {

    /** A plain paragraph. */
    public static Paragraph of(String text) {
        return new Paragraph(0, text, Style.NORMAL);
    }

    /** A paragraph in that style. */
    public static Paragraph of(String text, Style style) {
        return new Paragraph(0, text, style);
    }

    /** An empty line. */
    public static Paragraph gap() {
        return of("");
    }

    private record Line(int margin, String text, Style style) {}

    private static List<Line> lines(List<Paragraph> paragraphs, int width) {
        return lines(paragraphs, width, Integer.MAX_VALUE);
    }

    /** All lines, or somewhat more than so many where there are more. */
    private static List<Line> lines(List<Paragraph> paragraphs, int width, int most) {
        List<Line> lines = new ArrayList<>();
        for (Paragraph paragraph : paragraphs) {
            if (lines.size() > most) {
                break;
            }
            int room = Math.max(1, width - paragraph.margin());
            Width.wrap(paragraph.text(), room)
                    .forEach(text -> lines.add(new Line(paragraph.margin(), text, paragraph.style())));
        }
        return lines;
    }

    /** How many rows the text takes in that width. */
    public static int height(List<Paragraph> paragraphs, int width) {
        return lines(paragraphs, width).size();
    }

    /** Draws the text from that line on, as far as it can be scrolled, with a scroll bar where there is more. */
    public static void draw(Canvas canvas, List<Paragraph> paragraphs, int top, Surroundings around) {
        // A text that needs a bar is broken anew beside it, so its lines without one are not wanted.
        List<Line> lines = lines(paragraphs, canvas.columns(), canvas.rows());
        boolean bar = lines.size() > canvas.rows();
        if (bar) {
            lines = lines(paragraphs, canvas.columns() - 2);
        }
        int first = Math.max(0, Math.min(top, lines.size() - canvas.rows()));
        Canvas room = canvas.part(0, 0, canvas.rows(), canvas.columns() - (bar ? 2 : 0));
        for (int row = 0; row < room.rows() && first + row < lines.size(); row++) {
            Line line = lines.get(first + row);
            room.put(row, line.margin(), line.text(), line.style());
        }
        if (bar && canvas.columns() > 2) {
            Lists.scrollBar(canvas, first, lines.size(), around.glyphs());
        }
    }

    /**
     * The line to scroll to, kept inside what there is.
     *
     * @param rows of the canvas in which it is drawn
     * @param width of that canvas
     */
    public static int scrolled(List<Paragraph> paragraphs, int top, int by, int rows, int width) {
        boolean bar = height(paragraphs, width) > rows;
        int hidden = bar ? height(paragraphs, width - 2) - rows : 0;
        return Math.max(0, Math.min(Math.min(top, hidden) + by, hidden));
    }
}
