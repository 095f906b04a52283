/**
 * A canyon and what is in it: the line of obstacles, stations, anchors and their parts, and both gradings. It does not
 * know what anybody found there, nor how it is stored or shown.
 */
@NullMarked
package thalweg.route;

import org.jspecify.annotations.NullMarked;
