package thalweg.tui.shell;

import thalweg.tui.core.Message;

/**
 * The terminal has another size.
 *
 * @param rows 1 or more
 * @param columns 1 or more
 */
public record Resized(int rows, int columns) implements Message {}
