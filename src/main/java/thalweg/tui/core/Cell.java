package thalweg.tui.core;

import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * One cell of the terminal.
 *
 * @param text a grapheme cluster of one or two cells, or empty in the second cell of a wide one
 * @param style how it looks
 */
public record Cell(String text, Style style) {

    /** Nothing. */
    public static final Cell BLANK = new Cell(" ", Style.NORMAL);

    /** Cells that screens are full of are there already: a picture has thousands, and the next has them again. */
    private static final int KNOWN = 0x100;

    private static final Map<Style, @Nullable Cell[]> CELLS = new EnumMap<>(Style.class);

    static {
        for (Style style : Style.values()) {
            CELLS.put(style, new Cell[KNOWN]);
        }
    }

    /** The cell of a character that is one cell wide and a cluster by itself. */
    static Cell of(char character, Style style) {
        if (character >= KNOWN) {
            return new Cell(String.valueOf(character), style);
        }
        @Nullable Cell[] cells = Objects.requireNonNull(CELLS.get(style));
        Cell known = cells[character];
        if (known == null) {
            known = new Cell(String.valueOf(character), style);
            cells[character] = known;
        }
        return known;
    }

    /** Written out: thousands are compared for a picture, and what a record links by itself is slow at first. */
    @Override
    public boolean equals(@Nullable Object other) {
        return this == other || (other instanceof Cell cell && text.equals(cell.text) && style == cell.style);
    }

    @Override
    public int hashCode() {
        return 31 * text.hashCode() + style.hashCode();
    }
}
