/**
 * Files of waypoints in the open format GPX, read into values: what is in them, and what is wrong with them. It does not
 * know canyons: what a waypoint stands for, a person decides.
 */
@NullMarked
package thalweg.exchange.gpx;

import org.jspecify.annotations.NullMarked;
