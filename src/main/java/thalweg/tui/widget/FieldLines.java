package thalweg.tui.widget;

import java.util.ArrayList;
import java.util.List;
import thalweg.text.Width;
import thalweg.tui.core.Canvas;
import thalweg.tui.core.Style;

/**
 * The lines in which a text of several lines is shown while it is edited: broken behind a space where there is one.
 *
 * @param clusters of the text
 * @param starts for each line its first cluster, by index; at least one
 */
record FieldLines(List<String> clusters, List<Integer> starts) {

    FieldLines {
        starts = List.copyOf(starts);
    }

    /** Breaks the text into lines of that many cells, 2 or more. */
    static FieldLines of(TextField field, int width) {
        List<String> clusters = field.clusters();
        List<Integer> starts = new ArrayList<>(List.of(0));
        int used = 0;
        int afterSpace = 0;
        for (int i = 0; i < clusters.size(); i++) {
            String cluster = clusters.get(i);
            int cells = Width.of(cluster);
            if (used + cells > width) {
                int next = afterSpace > starts.get(starts.size() - 1) ? afterSpace : i;
                starts.add(next);
                used = Width.of(String.join("", clusters.subList(next, i)));
            }
            used += cells;
            if (cluster.equals("\n")) {
                starts.add(i + 1);
                used = 0;
            } else if (cluster.equals(" ")) {
                afterSpace = i + 1;
            }
        }
        return new FieldLines(clusters, starts);
    }

    private String text(int line) {
        int end = line + 1 < starts.size() ? starts.get(line + 1) : clusters.size();
        return String.join("", clusters.subList(starts.get(line), end)).replace("\n", "");
    }

    private int lineOf(int cursor) {
        int line = 0;
        while (line + 1 < starts.size() && starts.get(line + 1) <= cursor) {
            line++;
        }
        return line;
    }

    /** Draws as many lines as fit, the one with the cursor among them; without the focus, the first ones. */
    static void draw(Canvas canvas, TextField field, boolean focused, Style style) {
        FieldLines lines = of(field, Math.max(2, canvas.columns() - 1));
        int cursorLine = lines.lineOf(field.cursor());
        int top = focused ? Math.max(0, cursorLine - canvas.rows() + 1) : 0;
        for (int row = 0; row < canvas.rows(); row++) {
            if (focused) {
                canvas.fill(row, style);
            }
            if (top + row < lines.starts().size()) {
                canvas.put(row, 0, lines.text(top + row), style);
            }
        }
        if (focused) {
            List<String> before = lines.clusters().subList(lines.starts().get(cursorLine), field.cursor());
            canvas.cursor(cursorLine - top, Width.of(String.join("", before)));
        } else if (canvas.rows() > 0 && lines.starts().size() > canvas.rows()) {
            int last = canvas.rows() - 1;
            canvas.fit(last, 0, canvas.columns(), lines.text(last) + "…", style);
        }
    }
}
