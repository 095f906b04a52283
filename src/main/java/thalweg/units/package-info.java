/**
 * Force, length, mass and angle, read and written as people do, metric and imperial. It does not know what is measured.
 */
@NullMarked
package thalweg.units;

import org.jspecify.annotations.NullMarked;
