/**
 * Runs the interface: one loop that turns keys and results into states, workers that do what the states ask for, and the
 * terminal behind a port. It must not know what the screens show, nor by which library a terminal is painted.
 */
@NullMarked
package thalweg.tui.runtime;

import org.jspecify.annotations.NullMarked;
