package thalweg.rig;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import thalweg.units.Angle;
import thalweg.units.Force;
import thalweg.units.Length;

/**
 * Finds where limiter knots belong, so that the master slides freely over a range of directions and no farther.
 *
 * <p>On one closed strand of the same focus and material, without knots, the master takes up so much of the way to each
 * point as its load asks for. What it leaves of that way at the least, unloaded, is where the knot belongs: {@code
 * max(0, max over the range of (dist(focus, point) - dist(master, point) / (1 + strain)))}. Where a sling goes round the
 * point, its end stands for the point, as it hangs.
 */
final class FindLimits {

    /** Between the directions that are looked at first, at most [°]. */
    private static final double STEP_DEGREES = 1;

    /** After so many the direction is known to a thousandth of a degree, and a smooth maximum far better. */
    private static final int THIRDS = 20;

    private final List<RigPoint> points;
    private final Vector3 focus;
    private final double stiffness;
    private final RestState rest;

    private FindLimits(List<RigPoint> points, RigLoad load, Vector3 focus, Force stiffness) {
        this.points = points;
        this.focus = focus;
        this.stiffness = stiffness.inKilonewtons();
        RigSetup sliding = new RigSetup(
                RigKind.SLIDING,
                focus,
                stiffness,
                1,
                points.stream().map(point -> new Length(0)).toList(),
                Optional.of(new Sliding(true, 0)),
                Optional.empty(),
                OptionalDouble.empty());
        this.rest = new RestState(new RigInput("", points, load, sliding, List.of()));
    }

    /**
     * How far each knot is from the focus.
     *
     * @param points two
     * @param load whose weight and lean count, not its aim
     * @return in the order of the points; 0 or more, at most the way from the focus to the point
     */
    static List<Length> of(List<RigPoint> points, RigLoad load, Vector3 focus, Force stiffness, LimitRange range) {
        FindLimits find = new FindLimits(points, load, focus, stiffness);
        double from = range.from().degrees();
        double wide = range.to().degrees() - from;
        int steps = (int) Math.ceil(wide / STEP_DEGREES);
        double[] looks = IntStream.rangeClosed(0, steps)
                .mapToDouble(i -> i == steps ? range.to().degrees() : from + wide * i / steps)
                .toArray();
        List<RigState> states = Arrays.stream(looks)
                .mapToObj(degrees -> find.rest.under(new Angle(degrees)))
                .toList();
        return IntStream.range(0, points.size())
                .mapToObj(point -> new Length(Math.max(0, find.most(point, looks, states))))
                .toList();
    }

    /** How much of the way from the focus to a point is on the master's side of its knot, at the least [m]. */
    private double takenUp(int point, RigState state) {
        StrandPull loop = state.strands().get(0);
        double strain = loop.tension().inKilonewtons() / stiffness;
        Vector3 laidTo = Slung.end(points.get(point), focus);
        return focus.distance(laidTo) - state.master().distance(loop.path().get(2 * point)) / (1 + strain);
    }

    /** The most over all directions: of those looked at, and then between the neighbours of the best of them. */
    private double most(int point, double[] looks, List<RigState> states) {
        int best = 0;
        for (int i = 1; i < looks.length; i++) {
            if (takenUp(point, states.get(i)) > takenUp(point, states.get(best))) {
                best = i;
            }
        }
        double most = takenUp(point, states.get(best));
        double low = looks[Math.max(0, best - 1)];
        double high = looks[Math.min(looks.length - 1, best + 1)];
        for (int i = 0; i < THIRDS && low < high; i++) {
            double left = low + (high - low) / 3;
            double right = high - (high - low) / 3;
            double atLeft = takenUp(point, rest.under(new Angle(left)));
            double atRight = takenUp(point, rest.under(new Angle(right)));
            most = Math.max(most, Math.max(atLeft, atRight));
            if (atLeft < atRight) {
                low = left;
            } else {
                high = right;
            }
        }
        return most;
    }
}
