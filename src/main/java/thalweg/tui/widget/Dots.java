package thalweg.tui.widget;

import java.util.stream.IntStream;
import thalweg.tui.core.Canvas;
import thalweg.tui.core.Glyphs;
import thalweg.tui.core.Style;

/** A raster finer than cells: each cell holds 2 by 4 dots in braille, 2 by 2 in blocks, 1 by 1 in ASCII. */
final class Dots {

    private static final int DASH = 3;

    /** The ASCII sign inside of what is filled. */
    private static final char FILLED = '#';

    private static final char CROSSING = '+';

    /** The ASCII sign of what is only there for orientation. */
    private static final char DOTTED = ':';

    /** The bit of each dot in a braille cell, by row and column. Source: Unicode, block Braille Patterns. */
    private static final int[][] BRAILLE = {{0x01, 0x08}, {0x02, 0x10}, {0x04, 0x20}, {0x40, 0x80}};

    /** The quadrants by the bits 1 upper left, 2 upper right, 4 lower left, 8 lower right. */
    private static final String QUADRANTS = " ▘▝▀▖▌▞▛▗▚▐▜▄▙▟█";

    private final int rows;
    private final int columns;
    private final Glyphs glyphs;
    private final int across;
    private final int down;
    private final int[][] bits;
    private final char[][] signs;
    private final Style[][] styles;

    Dots(int rows, int columns, Glyphs glyphs) {
        this.rows = rows;
        this.columns = columns;
        this.glyphs = glyphs;
        this.across = glyphs == Glyphs.ASCII ? 1 : 2;
        this.down = glyphs == Glyphs.BRAILLE ? 4 : glyphs == Glyphs.BLOCKS ? 2 : 1;
        this.bits = new int[rows][columns];
        this.signs = new char[rows][columns];
        this.styles = new Style[rows][columns];
    }

    /** Draws a straight stroke between two places in cells. */
    void stroke(double fromColumn, double fromRow, double toColumn, double toRow, boolean dashed, Style style) {
        char sign = sign(toColumn - fromColumn, toRow - fromRow);
        stroke(fromColumn, fromRow, toColumn, toRow, (step, x, y) -> !dashed || step / DASH % 2 == 0, sign, style);
    }

    /** An upright or level stroke of every second dot, so that it is told from others without colour. */
    void dotted(double fromColumn, double fromRow, double toColumn, double toRow, Style style) {
        boolean every = across * down == 1;
        stroke(fromColumn, fromRow, toColumn, toRow, (step, x, y) -> every || (x + y) % 2 == 0, DOTTED, style);
    }

    private interface Inked {
        boolean at(int step, int x, int y);
    }

    private void stroke(
            double fromColumn, double fromRow, double toColumn, double toRow, Inked inked, char sign, Style style) {
        double width = (toColumn - fromColumn) * across;
        double height = (toRow - fromRow) * down;
        int steps = (int) Math.ceil(Math.max(Math.abs(width), Math.abs(height)));
        for (int step = 0; step <= Math.max(1, steps); step++) {
            double part = (double) step / Math.max(1, steps);
            int x = (int) Math.floor(fromColumn * across + width * part);
            int y = (int) Math.floor(fromRow * down + height * part);
            if (inked.at(step, x, y)) {
                dot(x, y, sign, style);
            }
        }
    }

    /** Puts signs in the place of whatever stands there, for a shape too small for its outline to be seen. */
    void put(double fromColumn, double toColumn, double atRow, char sign, Style style) {
        int row = (int) Math.floor(atRow);
        for (int column = (int) Math.floor(fromColumn); column <= Math.floor(toColumn); column++) {
            if (row >= 0 && row < rows && column >= 0 && column < columns) {
                signs[row][column] = 0;
                dot(column * across, row * down, sign, style);
            }
        }
    }

    /**
     * Inks the inside of a closed outline, also of one that crosses itself (what an odd number of edges surrounds).
     *
     * @param corners places across, in cells
     * @param heights places down, in cells, as many
     */
    void fill(double[] corners, double[] heights, Style style) {
        for (int y = 0; y < rows * down; y++) {
            double middle = (y + 0.5) / down;
            double[] crossings = crossings(corners, heights, middle);
            for (int pair = 0; pair + 1 < crossings.length; pair += 2) {
                int from = (int) Math.ceil(Math.max(0, crossings[pair]) * across - 0.5);
                int to = (int) Math.floor(Math.min(columns, crossings[pair + 1]) * across - 0.5);
                for (int x = from; x <= to; x++) {
                    dot(x, y, FILLED, style);
                }
            }
        }
    }

    /** Where the edges of the outline cross a height, from left to right. */
    private static double[] crossings(double[] corners, double[] heights, double height) {
        return IntStream.range(0, corners.length)
                .filter(i -> heights[i] <= height != heights[(i + 1) % heights.length] <= height)
                .mapToDouble(i -> {
                    int next = (i + 1) % corners.length;
                    double part = (height - heights[i]) / (heights[next] - heights[i]);
                    return corners[i] + (corners[next] - corners[i]) * part;
                })
                .sorted()
                .toArray();
    }

    private void dot(int x, int y, char sign, Style style) {
        int column = Math.floorDiv(x, across);
        int row = Math.floorDiv(y, down);
        if (column < 0 || row < 0 || column >= columns || row >= rows) {
            return;
        }
        int inColumn = Math.floorMod(x, across);
        int inRow = Math.floorMod(y, down);
        bits[row][column] |= glyphs == Glyphs.BRAILLE ? BRAILLE[inRow][inColumn] : 1 << (inRow * across + inColumn);
        signs[row][column] = together(signs[row][column], sign);
        styles[row][column] = style;
    }

    /** What stands in a cell that two strokes meet in; the outline of what is filled stays to be seen. */
    private static char together(char before, char sign) {
        if (before == 0 || before == FILLED || before == DOTTED || before == sign) {
            return sign;
        }
        return sign == FILLED || sign == DOTTED ? before : CROSSING;
    }

    /** The ASCII sign that leans as the stroke does; a cell is twice as high as wide. */
    private static char sign(double across, double down) {
        double steep = Math.abs(down * 2) / Math.max(1e-9, Math.abs(across));
        if (steep > 2.5) {
            return '|';
        }
        if (steep < 0.4) {
            return '-';
        }
        return across * down > 0 ? '\\' : '/';
    }

    /** Paints what was drawn; cells without a dot are left as they are. */
    void paint(Canvas canvas) {
        for (int row = 0; row < rows; row++) {
            for (int column = 0; column < columns; column++) {
                Style style = styles[row][column];
                if (bits[row][column] != 0 && style != null) {
                    canvas.put(row, column, glyph(row, column), style);
                }
            }
        }
    }

    private String glyph(int row, int column) {
        return switch (glyphs) {
            case BRAILLE -> Character.toString(0x2800 + bits[row][column]);
            case BLOCKS -> Character.toString(QUADRANTS.charAt(bits[row][column]));
            case ASCII -> Character.toString(signs[row][column]);
        };
    }
}
