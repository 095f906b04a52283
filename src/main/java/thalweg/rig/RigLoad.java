package thalweg.rig;

import java.util.Optional;
import thalweg.units.Angle;
import thalweg.units.Force;
import thalweg.units.Length;
import thalweg.units.Mass;

/**
 * What hangs on the anchor, and where it pulls.
 *
 * @param weight the steady pull, above 0: that of the load at rest, times its factor
 * @param mass as stated; empty where the load was stated as a force
 * @param toward aim, from straight down in the plane of the wall, positive to the right
 * @param sway how far the pull may turn to either side of the aim, 0 to 90 degrees
 * @param leanOut from the plane of the wall towards the viewer, -90 to 90 degrees
 * @param ropeOut unloaded length of rope between the master and the load, 0 or more
 * @param ropeStiffness force per unit strain of that rope, above 0; known where rope is out
 * @param spread log-standard-deviation of the load [-], 0 or more
 * @param factor by which the pull is larger than that of the load at rest [-], 1 or more
 */
public record RigLoad(
        Force weight,
        Optional<Mass> mass,
        Angle toward,
        Angle sway,
        Angle leanOut,
        Length ropeOut,
        Optional<Force> ropeStiffness,
        double spread,
        double factor) {

    public RigLoad {
        if (weight.newtons() <= 0
                || sway.degrees() < 0
                || ropeOut.metres() < 0
                || !Double.isFinite(spread)
                || spread < 0
                || !(factor >= 1 && Double.isFinite(factor))) {
            throw new IllegalArgumentException(
                    "a load pulls, its sway, rope and spread are 0 or more, and its factor is 1 or more");
        }
        if (ropeOut.metres() > 0 && ropeStiffness.isEmpty()) {
            throw new IllegalArgumentException("rope that is out has a stiffness");
        }
    }

    /** A load at rest. */
    public RigLoad(
            Force weight,
            Optional<Mass> mass,
            Angle toward,
            Angle sway,
            Angle leanOut,
            Length ropeOut,
            Optional<Force> ropeStiffness,
            double spread) {
        this(weight, mass, toward, sway, leanOut, ropeOut, ropeStiffness, spread, 1);
    }

    /** What it would pull at rest: as stated, without the factor. */
    public Force atRest() {
        return mass.map(Mass::weight).orElseGet(() -> new Force(weight.newtons() / factor));
    }

    /**
     * The unit vector of a pull.
     *
     * @param toward from straight down in the plane of the wall, positive to the right
     */
    public Vector3 direction(Angle toward) {
        double a = toward.inRadians();
        double b = leanOut.inRadians();
        return new Vector3(Math.sin(a) * Math.cos(b), -Math.cos(a) * Math.cos(b), Math.sin(b));
    }
}
