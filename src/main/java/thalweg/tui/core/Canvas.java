package thalweg.tui.core;

import java.util.Arrays;
import java.util.Optional;
import thalweg.text.Shown;
import thalweg.text.Width;

/**
 * Cells to paint on: a whole terminal or a rectangle of one. Whatever does not fit is cut off; a wide character is never
 * cut in half.
 */
public final class Canvas {

    /** A cell of the terminal. */
    public record Spot(int row, int column) {}

    private static final class Sheet {
        private final Cell[][] cells;
        private Optional<Spot> cursor = Optional.empty();

        Sheet(int rows, int columns) {
            cells = new Cell[rows][columns];
            for (Cell[] row : cells) {
                Arrays.fill(row, Cell.BLANK);
            }
        }
    }

    private final Sheet sheet;
    private final int top;
    private final int left;
    private final int rows;
    private final int columns;

    private Canvas(Sheet sheet, int top, int left, int rows, int columns) {
        this.sheet = sheet;
        this.top = top;
        this.left = left;
        this.rows = rows;
        this.columns = columns;
    }

    /** An empty canvas of that size, 0 or more. */
    public static Canvas of(int rows, int columns) {
        return new Canvas(new Sheet(rows, columns), 0, 0, rows, columns);
    }

    /** How many rows there are. */
    public int rows() {
        return rows;
    }

    /** How many columns there are. */
    public int columns() {
        return columns;
    }

    /** A rectangle of this canvas, cut to what is there. */
    public Canvas part(int row, int column, int height, int width) {
        int fromRow = Math.min(Math.max(0, row), rows);
        int fromColumn = Math.min(Math.max(0, column), columns);
        int toRow = Math.max(fromRow, Math.min(rows, row + height));
        int toColumn = Math.max(fromColumn, Math.min(columns, column + width));
        return new Canvas(sheet, top + fromRow, left + fromColumn, toRow - fromRow, toColumn - fromColumn);
    }

    /**
     * Writes a line of text and returns the column after it.
     *
     * @param row counted from 0; outside it writes nothing
     * @param column counted from 0
     */
    public int put(int row, int column, String text, Style style) {
        String safe = Shown.safe(text);
        if (Width.isPlain(safe)) {
            return putPlain(row, column, safe, style);
        }
        int at = column;
        for (String cluster : Width.clusters(safe)) {
            int width = Width.of(cluster);
            int end = at + width;
            if (width > 0 && row >= 0 && row < rows && end > 0 && at < columns) {
                if (at >= 0 && end <= columns) {
                    set(row, at, width, new Cell(cluster, style));
                } else if (columns > 0) {
                    set(row, Math.max(0, at), 1, new Cell(" ", style));
                }
            }
            at = end;
        }
        return at;
    }

    /** Most texts are plain, and need no tables. */
    private int putPlain(int row, int column, String text, Style style) {
        if (row >= 0 && row < rows) {
            int from = Math.max(0, -column);
            int to = Math.min(text.length(), columns - column);
            for (int i = from; i < to; i++) {
                set(row, column + i, 1, Cell.of(text.charAt(i), style));
            }
        }
        return column + text.length();
    }

    /** Overwriting one half of a wide character blanks the other. */
    private void set(int row, int column, int width, Cell cell) {
        Cell[] line = sheet.cells[top + row];
        int at = left + column;
        if (line[at].text().isEmpty() && at > 0) {
            line[at - 1] = new Cell(" ", line[at - 1].style());
        }
        int after = at + width;
        if (after < line.length && line[after].text().isEmpty()) {
            line[after] = new Cell(" ", line[after].style());
        }
        line[at] = cell;
        if (width == 2) {
            line[at + 1] = new Cell("", cell.style());
        }
    }

    /** Writes a text cut to that many cells, with an ellipsis where something is missing, and filled up with spaces. */
    public void fit(int row, int column, int width, String text, Style style) {
        put(row, column, Width.pad(Width.cut(Shown.safe(text), width), width), style);
    }

    /** Fills a row with spaces in that style. */
    public void fill(int row, Style style) {
        put(row, 0, " ".repeat(columns), style);
    }

    /** Puts the terminal's cursor on a cell, so that it is seen and heard where the focus is. */
    public void cursor(int row, int column) {
        if (row >= 0 && row < rows && column >= 0 && column < columns) {
            sheet.cursor = Optional.of(new Spot(top + row, left + column));
        }
    }

    /** Where the cursor is, counted on the whole terminal. */
    public Optional<Spot> cursor() {
        return sheet.cursor;
    }

    /** The cell at a place of this canvas. */
    public Cell cell(int row, int column) {
        return sheet.cells[top + row][left + column];
    }

    /** One row as plain text, without spaces at its end. */
    public String row(int row) {
        StringBuilder out = new StringBuilder();
        for (int column = 0; column < columns; column++) {
            out.append(cell(row, column).text());
        }
        return out.toString().stripTrailing();
    }

    /** Everything as plain text, a line a row. */
    public String text() {
        StringBuilder out = new StringBuilder();
        for (int row = 0; row < rows; row++) {
            out.append(row(row)).append('\n');
        }
        return out.toString();
    }
}
