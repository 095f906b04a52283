package thalweg.tui.core;

/** The signs that a terminal can be trusted with. */
public enum Glyphs {
    /** Box lines, and dots of eight for drawings. */
    BRAILLE,
    /** Box lines and block elements. */
    BLOCKS,
    /** Nothing but ASCII. */
    ASCII
}
