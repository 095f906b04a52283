package thalweg.rig;

import thalweg.units.Force;
import thalweg.units.Length;

/** How much harder a weight pulls than at rest when it comes onto an elastic part at once. */
public final class SuddenLoad {

    private SuddenLoad() {}

    /**
     * The largest pull in parts of the weight: 1 + sqrt(1 + 2hk/W). Assumes a massless spring that follows Hooke's law,
     * no damping, and that the weight keeps to it once it is met.
     *
     * @param height that it falls before the spring begins to stretch; 0 for a weight that is let go
     * @param newtonsPerMetre of the spring [N/m], above 0
     * @param weight above 0
     * @return 2 where it is let go from no height, and more from any [-]
     * @see "Gere, Mechanics of Materials, 2.8 Impact loading"
     */
    public static double factor(Length height, double newtonsPerMetre, Force weight) {
        return 1 + Math.sqrt(1 + 2 * height.metres() * newtonsPerMetre / weight.newtons());
    }
}
