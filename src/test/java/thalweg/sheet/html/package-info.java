/** Checks of sheets as HTML, down to what a browser prints. They do not know plain text. */
@NullMarked
package thalweg.sheet.html;

import org.jspecify.annotations.NullMarked;
