/** Checks of sheets as Markdown, by a library that reads it. */
@NullMarked
package thalweg.sheet.markdown;

import org.jspecify.annotations.NullMarked;
