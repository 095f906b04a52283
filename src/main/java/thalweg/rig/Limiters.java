package thalweg.rig;

import java.util.List;
import java.util.Optional;
import thalweg.units.Length;

/**
 * The knots that limit how far a master slides, and what it slides on between them.
 *
 * @param fromFocus how far the knot of each of the two legs is from the focus, in the order of the points; 0 or more and
 *     not both 0, each shorter than its leg
 * @param sliderStrands identical parallel strands between the knots, 1 or more
 * @param friction between these and the master [-], 0 or more
 * @param range from which the distances were found; empty where they were stated
 */
public record Limiters(List<Length> fromFocus, int sliderStrands, double friction, Optional<LimitRange> range) {

    public Limiters {
        fromFocus = List.copyOf(fromFocus);
        boolean two = fromFocus.size() == 2 && fromFocus.stream().allMatch(length -> length.metres() >= 0);
        if (!two || !(metres(fromFocus) > 0) || sliderStrands < 1) {
            throw new IllegalArgumentException("two knots limit a slider that has a length");
        }
        if (!(friction >= 0) || !Double.isFinite(friction)) {
            throw new IllegalArgumentException("friction is 0 or more");
        }
    }

    private static double metres(List<Length> lengths) {
        return lengths.stream().mapToDouble(Length::metres).sum();
    }

    /** How long the slider is, unloaded. */
    public Length slider() {
        return new Length(metres(fromFocus));
    }
}
