/**
 * The terminal of the program: its keys decoded, its cells painted through Lanterna, its settings kept and given back. It
 * must not know what is painted, nor what a key means.
 */
@NullMarked
package thalweg.tui.lanterna;

import org.jspecify.annotations.NullMarked;
