package thalweg.rig;

import thalweg.units.Force;

/**
 * What one point bears.
 *
 * @param point its name
 * @param pull on the point, the sum of the tensions that reach it [kN]
 * @param share of the sum of the forces on all points [-], 0 to 1
 */
public record PointForce(String point, Vector3 pull, double share) {

    /** How hard the point is pulled. */
    public Force force() {
        return Force.kilonewtons(pull.length());
    }
}
