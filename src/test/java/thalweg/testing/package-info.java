/**
 * What tests of several packages share: random records from a seed. It does not know any test.
 */
@NullMarked
package thalweg.testing;

import org.jspecify.annotations.NullMarked;
