/**
 * What the calculator takes, measured.
 */
@NullMarked
package thalweg.rig;

import org.jspecify.annotations.NullMarked;
