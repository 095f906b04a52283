/**
 * Putting records right: what goes along with a thing that is taken out of use, what follows from giving it another place,
 * and what a change was, as values and in words. It knows no database and no screen.
 */
@NullMarked
package thalweg.amend;

import org.jspecify.annotations.NullMarked;
