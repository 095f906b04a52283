/**
 * A sheet as plain text that survives a message app: no alignment by columns, no sign that such an app would take for
 * its own. It does not know the records behind the sheet.
 */
@NullMarked
package thalweg.sheet.text;

import org.jspecify.annotations.NullMarked;
