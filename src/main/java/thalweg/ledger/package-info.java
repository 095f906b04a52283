/**
 * What is kept for good: facts that never change, and things that change by immutable revisions, each known by the hash
 * of its canonical text. It does not know what the bodies say, nor where they are stored.
 */
@NullMarked
package thalweg.ledger;

import org.jspecify.annotations.NullMarked;
