package thalweg.rig;

import java.util.List;
import java.util.Optional;
import thalweg.units.Force;

/**
 * Between what the model peaks after each loss lie when what is not known exactly is varied: stiffness, evenness of tying,
 * direction. Load at rest, dry, undamped, as the peaks themselves; a bounce, slip or a sharp edge is in none of them.
 *
 * @param losses those that leave something, in the order of the input
 */
public record PeakRange(List<Loss> losses) {

    /**
     * The peaks after one loss.
     *
     * @param lost the point that goes
     * @param points each that is left
     * @param complete whether all variants could be followed; where not, the peaks may lie outside
     * @param rising whether a force still rose at the end in some variant, so that its peak may lie outside
     */
    public record Loss(String lost, List<OnPoint> points, boolean complete, boolean rising) {

        public Loss {
            points = List.copyOf(points);
        }

        /** The range on that point; empty for the one that was lost, and where nothing reaches it. */
        public Optional<OnPoint> on(String point) {
            return points.stream().filter(one -> one.point().equals(point)).findFirst();
        }

        /** Whether peaks may lie outside, since some variant could not be followed to its end. */
        public boolean mayLieOutside() {
            return !complete || rising;
        }
    }

    /**
     * The peak on one point.
     *
     * @param point its name
     * @param nominal as the answer has it; empty where that could not be followed
     * @param low the smallest
     * @param high the largest
     */
    public record OnPoint(String point, Optional<Force> nominal, Force low, Force high) {

        public OnPoint {
            if (low.compareTo(high) > 0) {
                throw new IllegalArgumentException("a range goes from low to high");
            }
        }
    }

    public PeakRange {
        losses = List.copyOf(losses);
    }

    /** The peaks after the loss of that point; empty where it leaves nothing. */
    public Optional<Loss> after(String lost) {
        return losses.stream().filter(loss -> loss.lost().equals(lost)).findFirst();
    }
}
