package thalweg.profile;

import java.util.BitSet;
import java.util.stream.Stream;
import thalweg.drawing.Shape;
import thalweg.drawing.Spot;

/** The cells of a picture, and what stands on each: the line with its marks, texts, strokes that lead to places. */
final class Cells {

    /** Places along a stroke at which its cells are taken, in each letter of its length. */
    private static final int STEPS = 16;

    private final int firstColumn;
    private final int columns;
    private final BitSet[] line;
    private final BitSet[] texts;
    private final BitSet[] leads;

    /**
     * @param rows of the picture
     * @param firstColumn the first one for labels
     * @param columns of the picture
     */
    Cells(int rows, int firstColumn, int columns) {
        this.firstColumn = firstColumn;
        this.columns = columns;
        this.line = empty(rows);
        this.texts = empty(rows);
        this.leads = empty(rows);
    }

    private static BitSet[] empty(int rows) {
        return Stream.generate(BitSet::new).limit(rows).toArray(BitSet[]::new);
    }

    int rows() {
        return line.length;
    }

    int firstColumn() {
        return firstColumn;
    }

    int columns() {
        return columns;
    }

    /** Takes the cells under a shape of the line or of a mark. */
    void draw(Shape shape) {
        for (int i = 0; i < shape.spots().size(); i++) {
            draw(shape.spots().get(i), shape.spots().get((i + 1) % shape.spots().size()));
        }
    }

    private void draw(Spot from, Spot to) {
        double length = Math.max(Math.abs(to.x() - from.x()), Math.abs(to.y() - from.y()));
        int steps = (int) Math.ceil(STEPS * length) + 1;
        for (int step = 0; step <= steps; step++) {
            double part = (double) step / steps;
            int row = Frame.row(from.y() + (to.y() - from.y()) * part);
            int column = (int) Math.floor(from.x() + (to.x() - from.x()) * part);
            if (row >= 0 && row < line.length && column >= 0) {
                line[row].set(column);
            }
        }
    }

    /** Whether a text fits there with an empty cell at either side of it. */
    boolean isFree(int row, int column, int width) {
        return row >= 0
                && row < line.length
                && column >= firstColumn
                && column + width <= columns
                && isClear(texts[row], column - 1, column + width + 1)
                && isClear(line[row], column, column + width)
                && isClear(leads[row], column, column + width);
    }

    private static boolean isClear(BitSet row, int from, int to) {
        int next = row.nextSetBit(Math.max(0, from));
        return next < 0 || next >= to;
    }

    /** Whether a stroke may pass there. */
    boolean letsPass(int row, int column) {
        return row >= 0
                && row < line.length
                && !line[row].get(column)
                && !texts[row].get(column)
                && !leads[row].get(column);
    }

    void take(Placed label) {
        set(label, true);
    }

    void give(Placed label) {
        set(label, false);
    }

    private void set(Placed label, boolean taken) {
        texts[label.row()].set(label.column(), label.column() + label.width(), taken);
        for (int row = label.topLead(); row <= label.bottomLead(); row++) {
            leads[row].set(label.lead(), taken);
        }
    }
}
