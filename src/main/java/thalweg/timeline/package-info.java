/**
 * What was found on parts over the years, laid out in letters: a row a part, time to the right. It does not know on which
 * screen or in which text the picture ends.
 */
@NullMarked
package thalweg.timeline;

import org.jspecify.annotations.NullMarked;
