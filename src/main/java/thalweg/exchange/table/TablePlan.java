package thalweg.exchange.table;

import java.util.List;
import thalweg.exchange.ImportPlan;

/**
 * What a table would change.
 *
 * @param plan to accept; nothing is in it where a row is refused
 * @param rows what becomes of each row, in the order of the file
 * @param leftOut headings of columns that are taken for nothing
 */
public record TablePlan(ImportPlan plan, List<RowReport> rows, List<String> leftOut) {

    public TablePlan {
        rows = List.copyOf(rows);
        leftOut = List.copyOf(leftOut);
    }

    /** How many rows become that. */
    public long count(RowReport.State state) {
        return rows.stream().filter(row -> row.state() == state).count();
    }

    /** Whether a row is refused, so that nothing is taken in. */
    public boolean isRefused() {
        return count(RowReport.State.REFUSED) > 0;
    }
}
