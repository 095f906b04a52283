/** Tests of the rig calculator. */
@NullMarked
package thalweg.rig;

import org.jspecify.annotations.NullMarked;
