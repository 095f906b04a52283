/** Tests of what a person can set. */
@NullMarked
package thalweg.settings;

import org.jspecify.annotations.NullMarked;
