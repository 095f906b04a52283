/**
 * What a terminal interface is made of: keys, messages, steps, screens, cells. It does not know what is shown, nor any
 * terminal.
 *
 * <p>A screen is an immutable record. {@code bindings} lists what keys do, each with the step that follows; {@code update}
 * answers everything else (text, results of work, the mouse); {@code draw} writes cells and changes nothing. Work outside
 * is an {@link thalweg.tui.core.Effect} in a step; its result comes back as a message to the same screen.
 */
@NullMarked
package thalweg.tui.core;

import org.jspecify.annotations.NullMarked;
