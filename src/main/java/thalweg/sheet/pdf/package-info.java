/** A sheet as PDF, made from its page. It does not know the records behind the sheet, and reaches for nothing outside. */
@NullMarked
package thalweg.sheet.pdf;

import org.jspecify.annotations.NullMarked;
