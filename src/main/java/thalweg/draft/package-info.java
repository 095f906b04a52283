/**
 * What somebody typed and nobody saved, as a value: which form it belongs to, what stood there first, what stands there
 * now. It does not know forms, screens, nor where drafts are kept.
 */
@NullMarked
package thalweg.draft;

import org.jspecify.annotations.NullMarked;
