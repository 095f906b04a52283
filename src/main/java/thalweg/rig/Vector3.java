package thalweg.rig;

/**
 * A place or a pull in space, as seen by someone who faces the anchor. Places are in [m], pulls in [kN].
 *
 * @param x to the right, finite
 * @param y up, finite
 * @param z out of the wall, towards the viewer, finite
 */
public record Vector3(double x, double y, double z) {

    /** Where the axes meet, and no pull at all. */
    public static final Vector3 ZERO = new Vector3(0, 0, 0);

    public Vector3 {
        if (!Double.isFinite(x) || !Double.isFinite(y) || !Double.isFinite(z)) {
            throw new IllegalArgumentException("a vector is finite");
        }
    }

    /** This and the other, one after the other. */
    public Vector3 plus(Vector3 other) {
        return new Vector3(x + other.x, y + other.y, z + other.z);
    }

    /** The way from the other to this. */
    public Vector3 minus(Vector3 other) {
        return new Vector3(x - other.x, y - other.y, z - other.z);
    }

    /**
     * @param factor [-]
     */
    public Vector3 times(double factor) {
        return new Vector3(x * factor, y * factor, z * factor);
    }

    /** The scalar product. */
    public double dot(Vector3 other) {
        return x * other.x + y * other.y + z * other.z;
    }

    /** How long it is, in its own unit. */
    public double length() {
        return Math.sqrt(dot(this));
    }

    /** How far the other place is [m]. */
    public double distance(Vector3 other) {
        return minus(other).length();
    }

    /**
     * The angle between two directions [°], 0 to 180.
     *
     * <p>By the half-angle of Kahan, which stays exact for directions that are nearly the same or nearly opposite.
     *
     * @param other not of length 0, as this
     * @see "W. Kahan, How futile are mindless assessments of roundoff in floating-point computation?, 2006, 12"
     */
    public double degreesTo(Vector3 other) {
        Vector3 one = times(1 / length());
        Vector3 two = other.times(1 / other.length());
        return Math.toDegrees(
                2 * Math.atan2(one.minus(two).length(), one.plus(two).length()));
    }
}
