/**
 * The command line: reads arguments, calls one service, prints the answer. It does not know the database nor the screen;
 * nothing else speaks to the command-line library.
 */
@NullMarked
package thalweg.cli;

import org.jspecify.annotations.NullMarked;
