package thalweg.sheet;

import java.util.List;
import java.util.Optional;
import thalweg.units.Force;
import thalweg.units.Length;

/**
 * What the model says of the loss of one point.
 *
 * @param point that lets go
 * @param after what comes of it; empty where nothing connects the master any more
 */
public record LossFigures(String point, Optional<After> after) {

    public LossFigures {
        if (point.isBlank()) {
            throw new IllegalArgumentException("a point has a name");
        }
    }

    /**
     * The rig without that point.
     *
     * @param within whether what is left stays within its strength at the peak; empty where unknown
     * @param why a sentence that names the part concerned
     * @param drop how far along the load the master comes to rest from where it was; below 0 where it rises
     * @param swing how far across the load, 0 or more
     * @param peaks the largest force on each point that is left; empty where the motion could not be followed
     * @param rising whether a force may still rise when the model stops looking
     * @param mayLieOutside whether a peak may lie outside its range
     */
    public record After(
            Optional<Boolean> within,
            String why,
            Length drop,
            Length swing,
            List<Peak> peaks,
            boolean rising,
            boolean mayLieOutside) {

        public After {
            peaks = List.copyOf(peaks);
        }
    }

    /**
     * The largest force on a point: of a load at rest, dry, undamped.
     *
     * @param point on which
     * @param force with everything as it was stated
     * @param low the smallest over what is not known exactly: stiffness, evenness of tying, direction
     * @param high the largest
     */
    public record Peak(String point, Force force, Force low, Force high) {}
}
