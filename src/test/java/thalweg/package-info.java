/** Tests of how the program starts. */
@NullMarked
package thalweg;

import org.jspecify.annotations.NullMarked;
