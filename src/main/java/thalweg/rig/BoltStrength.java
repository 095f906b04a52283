package thalweg.rig;

import thalweg.units.Force;

/**
 * What a bolt holds across its axis and along it. A pull at a slant uses up some of both:
 * {@code radial part / radial strength + axial part / axial strength} is at most 1.
 *
 * <p>The straight line between the two strengths is our choice, the strictest of the usual rules: others, from memory,
 * let it bulge. A pull that pushes the bolt into the rock counts as across, as a whole.
 *
 * @param radial across the axis, above 0
 * @param axial along the axis, out of the rock, above 0
 * @param axis the way out of the rock, of any length above 0
 * @param assumedAxis whether nobody stated it, so that it is taken to be straight out of the wall
 */
public record BoltStrength(Force radial, Force axial, Vector3 axis, boolean assumedAxis) {

    /** Straight out of the wall. */
    static final Vector3 OUT_OF_WALL = new Vector3(0, 0, 1);

    public BoltStrength {
        if (radial.newtons() <= 0 || axial.newtons() <= 0 || axis.length() == 0) {
            throw new IllegalArgumentException("a bolt has two strengths and a direction");
        }
    }

    /**
     * The pull straight across the axis that would use up as much of the bolt [kN].
     *
     * @param pull on the bolt [kN]
     */
    double alike(Vector3 pull) {
        Vector3 way = axis.times(1 / axis.length());
        double out = pull.dot(way);
        if (out <= 0) {
            return pull.length();
        }
        double across = pull.minus(way.times(out)).length();
        return across + out * radial.newtons() / axial.newtons();
    }
}
