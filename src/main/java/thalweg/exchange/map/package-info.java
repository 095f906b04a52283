/** Writes where things are, for programs that show maps. */
@NullMarked
package thalweg.exchange.map;

import org.jspecify.annotations.NullMarked;
