package thalweg.route;

import thalweg.units.Length;

/**
 * Where a point is, measured from the first point of its anchor by someone who faces it.
 *
 * @param right [m], negative to the left
 * @param up [m], negative below
 * @param out of the wall [m], negative behind
 */
public record PartPlace(Length right, Length up, Length out) {}
