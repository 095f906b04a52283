/**
 * What a person sets once for all their rigs, as values, and the file that holds it as text. It knows nothing of where that
 * file is, of screens or of commands.
 */
@NullMarked
package thalweg.settings;

import org.jspecify.annotations.NullMarked;
