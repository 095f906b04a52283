package thalweg.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

/**
 * Lines up the cells of a table that is too long to be looked at whole: the columns are as wide as the first rows need, and
 * wider only from a longer cell on.
 */
final class RunningColumns {

    /** Rows that are looked at before the first is printed. */
    private static final int FIRST = 50;

    private final Consumer<String> out;
    private final List<List<String>> first = new ArrayList<>();
    private final int[] widths;
    private boolean running;

    /**
     * @param heading a cell a column
     * @param out takes line after line
     */
    RunningColumns(List<String> heading, Consumer<String> out) {
        this.out = out;
        this.widths = new int[heading.size()];
        row(heading);
    }

    /** The next row, a cell a column. */
    void row(List<String> cells) {
        Columns.widen(widths, cells);
        if (running) {
            print(cells);
            return;
        }
        first.add(cells);
        if (first.size() > FIRST) {
            flush();
        }
    }

    /** Prints what is still held back; there may be no more rows. */
    void flush() {
        running = true;
        first.forEach(this::print);
        first.clear();
    }

    private void print(List<String> cells) {
        out.accept(Columns.line(cells, widths));
    }
}
