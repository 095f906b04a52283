package thalweg.tui.shell;

import thalweg.tui.core.Message;

/**
 * What came of work.
 *
 * @param frame number of the screen that asked
 * @param message for it
 */
public record Result(long frame, Message message) implements Message {}
