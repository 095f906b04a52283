/**
 * Failures whose message is a sentence a person can act on. It knows nothing of what failed.
 */
@NullMarked
package thalweg.fault;

import org.jspecify.annotations.NullMarked;
