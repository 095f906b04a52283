/**
 * Tests of the interface as a whole, around small screens of their own. They do not know the program's screens.
 */
@NullMarked
package thalweg.tui.shell;

import org.jspecify.annotations.NullMarked;
