package thalweg.tui.shell;

import thalweg.tui.core.Effect;

/**
 * Work to be done outside, and for whom.
 *
 * @param frame number of the screen that asked; the result goes there or nowhere
 * @param effect what there is to do
 */
public record Work(long frame, Effect effect) {}
