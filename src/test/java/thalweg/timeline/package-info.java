/** Tests of what is said about how figures come about. */
@NullMarked
package thalweg.timeline;

import org.jspecify.annotations.NullMarked;
