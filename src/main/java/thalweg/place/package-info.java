/**
 * Where something is: coordinates read and written in the notations people use. It does not know what stands there.
 */
@NullMarked
package thalweg.place;

import org.jspecify.annotations.NullMarked;
