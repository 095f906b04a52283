/**
 * Waypoints of a file and what a person decides that each of them is on a canyon's line. It does not know who asks, nor
 * how what was decided is written.
 */
@NullMarked
package thalweg.placing;

import org.jspecify.annotations.NullMarked;
