/**
 * How each record is written as a body of the ledger and read back; a file of records holds the same fields. It does not
 * know where the text comes from, nor where it goes.
 */
@NullMarked
package thalweg.body;

import org.jspecify.annotations.NullMarked;
