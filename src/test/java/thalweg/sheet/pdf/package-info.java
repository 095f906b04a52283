/** Tests of sheets as PDF. */
@NullMarked
package thalweg.sheet.pdf;

import org.jspecify.annotations.NullMarked;
