package thalweg.tui.core;

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
