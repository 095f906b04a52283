/** Wires the program together; everything else lives in a package of its own. */
@NullMarked
package thalweg;

import org.jspecify.annotations.NullMarked;
