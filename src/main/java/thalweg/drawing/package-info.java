/**
 * A display list that every output draws in its own way: lines, polygons and labels. It does not know what they mean,
 * nor whether they end as SVG, on paper or in terminal cells.
 */
@NullMarked
package thalweg.drawing;

import org.jspecify.annotations.NullMarked;
