package thalweg.rig;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import thalweg.units.Angle;
import thalweg.units.Force;
import thalweg.units.Length;

/**
 * What a redirect bears, and what becomes of the rig without it.
 *
 * @param redirect over which the rope runs
 * @param deflection by which it turns the rope, with the load at its aim [°], 0 to 180
 * @param force on it there
 * @param worst the largest force on it over the sway, which is beyond it
 * @param worstToward the direction of the load at which that is [°]
 * @param freed what becomes of the rig without it
 */
public record RedirectFigures(
        RigRedirect redirect, Angle deflection, Force force, Force worst, Angle worstToward, Freed freed) {

    /**
     * The rig hanging free, at rest. The fall to there is not modelled.
     *
     * @param steady at the aim of the load
     * @param worst the hardest pull on each point over its sway, without friction
     * @param turn by how much the direction of the pull at the master turns [°], 0 to 180
     * @param slack of rope that comes free, so that the load falls before the rope is taut again, 0 or more; empty where it
     *     is not known how much rope is out
     */
    public record Freed(RigState steady, List<WorstForce> worst, Angle turn, Optional<Length> slack) {

        public Freed {
            worst = List.copyOf(worst);
        }
    }

    /** Its strength over the largest force on it [-]; empty where it is unknown, or nothing is borne. */
    public OptionalDouble ratio() {
        return redirect.strength().isPresent() && worst.newtons() > 0
                ? OptionalDouble.of(redirect.strength().get().newtons() / worst.newtons())
                : OptionalDouble.empty();
    }

    /** That ratio in digits, never rounded up; empty text where there is none. */
    public String times() {
        return ratio().isPresent() ? Figures.times(ratio().getAsDouble()) : "";
    }
}
