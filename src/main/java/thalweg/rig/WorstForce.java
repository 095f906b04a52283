package thalweg.rig;

import thalweg.units.Angle;
import thalweg.units.Force;

/**
 * The hardest pull on a point anywhere in the sector.
 *
 * @param point its name
 * @param force on the point
 * @param direction of the load at which it happens, to 0.1 degree; among equals the one nearest to the aim
 */
public record WorstForce(String point, Force force, Angle direction) {}
