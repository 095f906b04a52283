/**
 * Texts as marks that a phone's camera reads (ISO/IEC 18004). It does not know what a text says, nor where it is drawn.
 */
@NullMarked
package thalweg.qr;

import org.jspecify.annotations.NullMarked;
