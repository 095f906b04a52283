/**
 * A sheet as one HTML file that needs nothing else: no network, no script, readable on a phone and on paper. It does
 * not know the records behind the sheet.
 */
@NullMarked
package thalweg.sheet.html;

import org.jspecify.annotations.NullMarked;
