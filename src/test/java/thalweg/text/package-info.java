/**
 * Tests of cleaning, folding, measuring and naming text. They know nothing of records or screens.
 */
@NullMarked
package thalweg.text;

import org.jspecify.annotations.NullMarked;
