/**
 * What a sheet says, as data: sections, tables and drawings in words that are already chosen. It does not know how it
 * is printed, nor where the records came from.
 */
@NullMarked
package thalweg.sheet;

import org.jspecify.annotations.NullMarked;
