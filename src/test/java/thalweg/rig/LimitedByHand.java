package thalweg.rig;

import java.util.List;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;

/**
 * A ring that slides on a cord between two knots, each of which ends a leg: its energy written from the mechanics alone
 * and minimised by Hipparchus over the place of the ring, which is all that moves here.
 *
 * <p>A leg bears what the cord between the knots bears, until its knot comes to the ring. From then on it is as long as
 * the way to the ring, whatever it bears then. So one number, the tension of the cord, says everything else.
 */
final class LimitedByHand {

    private final double[][] points = new double[2][];
    private final double[] rest = new double[2];
    private final double[] rate = new double[2];
    private final double cord;
    private final double cordRate;
    private final double[] load;

    LimitedByHand(RigInput input, List<Double> load) {
        Limiters limiters = input.rig().limiters().orElseThrow();
        double stiffness = input.rig().stiffness().inKilonewtons();
        double slider = 0;
        for (int i = 0; i < 2; i++) {
            Vector3 at = input.points().get(i).at();
            double limit = limiters.fromFocus().get(i).metres();
            points[i] = new double[] {at.x(), at.y(), at.z()};
            rest[i] = at.distance(input.rig().focus()) - limit;
            rate[i] = input.rig().strands() * stiffness / rest[i];
            slider += limit;
        }
        this.cord = slider;
        this.cordRate = limiters.sliderStrands() * stiffness / slider;
        this.load = load.stream().mapToDouble(Double::doubleValue).toArray();
    }

    /** What the ring's place comes to: tension of the cord, and for each leg its length and what it bears. */
    private record Inside(double tension, List<Double> lengths, List<Double> forces) {}

    private Inside inside(double[] ways) {
        double most = cordRate * Math.max(0, ways[0] + ways[1] - cord);
        double tension = most == 0
                ? 0
                : new BracketingNthOrderBrentSolver(1e-15, 1e-14 * most, 5)
                        .solve(500, pull -> pull - cordRate * Math.max(0, between(ways, pull) - cord), 0, most);
        return new Inside(
                tension,
                List.of(legLength(0, ways[0], tension), legLength(1, ways[1], tension)),
                List.of(Math.min(tension, bears(0, ways[0])), Math.min(tension, bears(1, ways[1]))));
    }

    /** What a leg bears that is as long as that [kN]. */
    private double bears(int leg, double length) {
        return rate[leg] * Math.max(0, length - rest[leg]);
    }

    private double between(double[] ways, double pull) {
        return ways[0] - legLength(0, ways[0], pull) + ways[1] - legLength(1, ways[1], pull);
    }

    private double legLength(int leg, double way, double pull) {
        return Math.min(way, rest[leg] + pull / rate[leg]);
    }

    /** Where the ring comes to rest. */
    double[] minimum(double[] start) {
        return EnergyByHand.minimum(this::energy, this::slope, start);
    }

    double energy(double[] ring) {
        double[] ways = ways(ring);
        Inside inside = inside(ways);
        double cordLength =
                ways[0] - inside.lengths().get(0) + ways[1] - inside.lengths().get(1);
        double sum = cordRate / 2 * Math.pow(Math.max(0, cordLength - cord), 2);
        for (int i = 0; i < 2; i++) {
            sum += rate[i] / 2 * Math.pow(Math.max(0, inside.lengths().get(i) - rest[i]), 2);
        }
        for (int axis = 0; axis < 3; axis++) {
            sum -= load[axis] * ring[axis];
        }
        return sum;
    }

    double[] slope(double[] ring) {
        double[] ways = ways(ring);
        List<Double> forces = inside(ways).forces();
        double[] slope = new double[3];
        for (int axis = 0; axis < 3; axis++) {
            slope[axis] = -load[axis];
            for (int i = 0; i < 2; i++) {
                slope[axis] += forces.get(i) * (ring[axis] - points[i][axis]) / ways[i];
            }
        }
        return slope;
    }

    /** How hard a point is pulled [kN]. */
    double pull(int point, double[] ring) {
        return inside(ways(ring)).forces().get(point);
    }

    private double[] ways(double[] ring) {
        double[] ways = new double[2];
        for (int i = 0; i < 2; i++) {
            for (int axis = 0; axis < 3; axis++) {
                ways[i] += Math.pow(ring[axis] - points[i][axis], 2);
            }
            ways[i] = Math.sqrt(ways[i]);
        }
        return ways;
    }
}
