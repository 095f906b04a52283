/**
 * Text as people write and see it: cleaned where it enters, folded for search, measured in terminal cells, looked up by
 * key. It does not know what the text is about.
 */
@NullMarked
package thalweg.text;

import org.jspecify.annotations.NullMarked;
