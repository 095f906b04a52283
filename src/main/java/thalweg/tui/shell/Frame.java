package thalweg.tui.shell;

import thalweg.tui.core.Screen;

/**
 * A screen on the stack.
 *
 * @param number by which results find it; never used twice
 * @param screen its state
 */
record Frame(long number, Screen screen) {}
