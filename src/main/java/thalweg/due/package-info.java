/** When a part is to be looked at, replaced or mended, and how far its last inspection can still be relied on. */
@NullMarked
package thalweg.due;

import org.jspecify.annotations.NullMarked;
