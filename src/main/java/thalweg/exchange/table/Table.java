package thalweg.exchange.table;

import java.util.ArrayList;
import java.util.List;

/**
 * A table as it stands in a file.
 *
 * @param separator that parts its cells
 * @param headings of the columns, from its first line; some may be empty
 * @param rows below, as long as the headings
 */
public record Table(Separator separator, List<String> headings, List<Row> rows) {

    /** Nothing. */
    public static final Table EMPTY = new Table(Separator.COMMA, List.of(), List.of());

    /**
     * One row.
     *
     * @param line of the file on which it begins, from 1
     * @param cells one a heading, without guards against formulas
     */
    public record Row(int line, List<String> cells) {
        public Row {
            cells = List.copyOf(cells);
        }
    }

    public Table {
        headings = List.copyOf(headings);
        rows = List.copyOf(rows);
    }

    /** The same with one more column, of which every cell says the same. */
    public Table plus(String heading, String cell) {
        List<String> more = new ArrayList<>(headings);
        more.add(heading);
        List<Row> longer = new ArrayList<>();
        for (Row row : rows) {
            List<String> cells = new ArrayList<>(row.cells());
            cells.add(cell);
            longer.add(new Row(row.line(), cells));
        }
        return new Table(separator, more, longer);
    }
}
