package thalweg.rig;

import thalweg.units.Angle;

/**
 * Directions of the load over which a master is to slide without coming up against a limiter knot.
 *
 * @param from from straight down in the plane of the wall, positive to the right
 * @param to not below the other
 */
public record LimitRange(Angle from, Angle to) {

    public LimitRange {
        if (from.degrees() > to.degrees()) {
            throw new IllegalArgumentException("a range goes from its lower end to its higher one");
        }
    }
}
