package thalweg.profile;

import thalweg.drawing.Spot;

/**
 * Where a profile lies in its room: one unit is the width of a letter, a row is two of them high, the upper left corner
 * is (0, 0). From the top: rows for labels, rows for the line, one row for the scale of distances.
 *
 * @param window of the line that is drawn
 * @param scale of it
 * @param top how far down the line is where the window begins [m]
 * @param left where the window begins [letters]
 * @param sky rows above the line
 * @param rows in all
 * @param columns in all
 */
record Frame(Window window, Scale scale, double top, double left, int sky, int rows, int columns) {

    /** The line begins that far below the rows for labels, so that a mark on it does not reach into them. */
    static final double HEADROOM = 0.8;

    /** Room below the deepest place, for the mark of an unknown height or of the chosen place. */
    static final double FOOTROOM = 2.2;

    /** At the right edge, for marks at the last place. */
    static final double RIGHT = 3;

    double x(double along) {
        return left + (along - window.from()) * scale.along();
    }

    double y(double down) {
        return -(2.0 * sky + HEADROOM + (down - top) * scale.down());
    }

    Spot spot(double along, double down) {
        return new Spot(x(along), y(down));
    }

    int column(double along) {
        return Math.min(columns - 1, (int) Math.floor(x(along)));
    }

    /** The row that holds a height on the picture. */
    static int row(double y) {
        return (int) Math.floor(-y / 2);
    }

    /** The middle of a row. */
    static double middle(int row) {
        return -2.0 * row - 1;
    }

    int firstColumn() {
        return (int) Math.floor(left);
    }

    /** The last row for the line and its labels; below it is the scale of distances. */
    int lastRow() {
        return rows - 2;
    }
}
