package thalweg.tui.core;

/**
 * One cell of the terminal.
 *
 * @param text a grapheme cluster of one or two cells, or empty in the second cell of a wide one
 * @param style how it looks
 */
public record Cell(String text, Style style) {

    /** Nothing. */
    public static final Cell BLANK = new Cell(" ", Style.NORMAL);
}
