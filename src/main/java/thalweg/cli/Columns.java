package thalweg.cli;

import java.util.ArrayList;
import java.util.List;
import thalweg.text.Width;

/** Lines up cells under each other, two spaces between; the last cell of a line is not filled up. */
final class Columns {

    private Columns() {}

    /**
     * The lines as one text.
     *
     * @param rows each with the same number of cells
     */
    static String of(List<List<String>> rows) {
        int[] widths = new int[rows.get(0).size()];
        rows.forEach(row -> widen(widths, row));
        StringBuilder out = new StringBuilder();
        rows.forEach(row -> out.append(line(row, widths)));
        return out.toString();
    }

    /** Makes columns as wide as that row needs [cells]. */
    static void widen(int[] widths, List<String> row) {
        for (int i = 0; i < row.size(); i++) {
            widths[i] = Math.max(widths[i], Width.of(row.get(i)));
        }
    }

    /** A row in columns of those widths [cells], with its line feed. */
    static String line(List<String> row, int[] widths) {
        List<String> cells = new ArrayList<>();
        for (int i = 0; i < row.size(); i++) {
            cells.add(i == row.size() - 1 ? row.get(i) : Width.pad(row.get(i), widths[i]));
        }
        return String.join("  ", cells).stripTrailing() + '\n';
    }
}
