package thalweg.rig;

import thalweg.units.Angle;
import thalweg.units.Force;

/**
 * The pull that counts most against the strength of a point anywhere in the sector. For a point of one strength that is the
 * hardest pull; for a bolt of two it may be another one, further out of the rock.
 *
 * @param point its name
 * @param force on the point
 * @param counted as hard as the pull straight across a bolt that uses up as much of it; else the force itself
 * @param direction of the load at which it happens
 */
public record CountedForce(String point, Force force, Force counted, Angle direction) {

    /** Of a point of one strength: the hardest pull, as it is. */
    static CountedForce of(WorstForce worst) {
        return new CountedForce(worst.point(), worst.force(), worst.force(), worst.direction());
    }
}
