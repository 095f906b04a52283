/**
 * The whole interface as one value: a stack of screens with title, foot line, help and notices around them. It does not
 * know what the screens show, nor any terminal.
 */
@NullMarked
package thalweg.tui.shell;

import org.jspecify.annotations.NullMarked;
