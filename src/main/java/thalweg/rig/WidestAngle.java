package thalweg.rig;

import thalweg.units.Angle;

/**
 * The widest angle between two loaded strands at the master anywhere in the sector.
 *
 * @param angle between the strands, 0 to 180 degrees
 * @param direction of the load at which it happens, to 0.1 degree; among equals the one nearest to the aim
 */
public record WidestAngle(Angle angle, Angle direction) {}
