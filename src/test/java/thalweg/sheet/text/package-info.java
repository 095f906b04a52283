/** Checks of sheets as plain text. They do not know HTML. */
@NullMarked
package thalweg.sheet.text;

import org.jspecify.annotations.NullMarked;
