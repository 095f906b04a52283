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
        for (List<String> row : rows) {
            for (int i = 0; i < row.size(); i++) {
                widths[i] = Math.max(widths[i], Width.of(row.get(i)));
            }
        }
        StringBuilder out = new StringBuilder();
        for (List<String> row : rows) {
            List<String> cells = new ArrayList<>();
            for (int i = 0; i < row.size(); i++) {
                cells.add(i == row.size() - 1 ? row.get(i) : Width.pad(row.get(i), widths[i]));
            }
            out.append(String.join("  ", cells).stripTrailing()).append('\n');
        }
        return out.toString();
    }
}
