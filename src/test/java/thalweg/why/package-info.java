/** Tests of what is said about how figures come about. */
@NullMarked
package thalweg.why;

import org.jspecify.annotations.NullMarked;
