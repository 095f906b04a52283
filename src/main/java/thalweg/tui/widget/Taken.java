package thalweg.tui.widget;

import java.util.BitSet;
import java.util.stream.Stream;

/** The cells of a picture on which labels stand already. */
final class Taken {

    private final BitSet[] rows;
    private final int columns;

    Taken(int rows, int columns) {
        this.rows = Stream.generate(() -> new BitSet(columns)).limit(rows).toArray(BitSet[]::new);
        this.columns = columns;
    }

    /** Takes those cells if they are there and free, with one free cell at either side; says whether they were. */
    boolean take(int row, int column, int width) {
        boolean there = row >= 0 && row < rows.length && column >= 0 && column + width <= columns;
        if (!there || rows[row].get(Math.max(0, column - 1), column + width + 1).cardinality() > 0) {
            return false;
        }
        rows[row].set(column, column + width);
        return true;
    }
}
