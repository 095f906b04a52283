package thalweg.sheet;

import java.util.List;

/**
 * One field of a table.
 *
 * @param lines one thing each, what is unknown says so; empty only where the column says nothing about this row
 */
public record Cell(List<Words> lines) {

    /** The column does not apply. */
    public static final Cell NONE = new Cell(List.of());

    public Cell {
        lines = List.copyOf(lines);
    }

    /** A field in one piece. */
    public static Cell of(Words words) {
        return new Cell(List.of(words));
    }
}
