/** Tests of the command line as a whole: arguments in, texts and exit codes out. */
@NullMarked
package thalweg.cli;

import org.jspecify.annotations.NullMarked;
