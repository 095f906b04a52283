/** A sheet as Markdown, for notes and pages that take it. It does not know the records behind the sheet. */
@NullMarked
package thalweg.sheet.markdown;

import org.jspecify.annotations.NullMarked;
