/**
 * Measures how long the program takes, and prints a table of it. It knows nothing of what is right.
 */
@NullMarked
package thalweg.bench;

import org.jspecify.annotations.NullMarked;
