package thalweg.rig;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.hipparchus.analysis.MultivariateFunction;
import org.hipparchus.analysis.MultivariateVectorFunction;
import org.hipparchus.analysis.differentiation.Gradient;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.optim.InitialGuess;
import org.hipparchus.optim.MaxEval;
import org.hipparchus.optim.SimpleValueChecker;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.hipparchus.optim.nonlinear.scalar.ObjectiveFunction;
import org.hipparchus.optim.nonlinear.scalar.ObjectiveFunctionGradient;
import org.hipparchus.optim.nonlinear.scalar.gradient.NonLinearConjugateGradientOptimizer;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresBuilder;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresProblem;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;
import org.hipparchus.util.Pair;

/**
 * The energy of cords under a load, written from the mechanics alone, differentiated and minimised by Hipparchus: by
 * conjugate gradients to near the minimum, and by Levenberg and Marquardt's method on the slopes from there.
 *
 * @param cords tension-only springs through places and free nodes
 * @param nodes how many free nodes there are; the last bears the load
 * @param load three components [kN]
 */
record EnergyByHand(List<Cord> cords, int nodes, List<Double> load) {

    /**
     * One spring.
     *
     * @param stops each a place of three coordinates, or the number of a free node alone
     * @param ring whether it goes on from the last stop to the first
     * @param rest its length without load [m]
     * @param rate strands times EA over rest [kN/m]
     */
    record Cord(List<double[]> stops, boolean ring, double rest, double rate) {}

    /** Where the free nodes end up, three coordinates each. */
    double[] minimum(double[] start) {
        return minimum(
                places -> energy(places).getValue(), places -> energy(places).getGradient(), start);
    }

    /** Where a function is least. */
    static double[] minimum(MultivariateFunction value, MultivariateVectorFunction slope, double[] start) {
        double[] near = new NonLinearConjugateGradientOptimizer(
                        NonLinearConjugateGradientOptimizer.Formula.POLAK_RIBIERE, new SimpleValueChecker(-1, 1e-14))
                .optimize(
                        new MaxEval(200_000),
                        new ObjectiveFunction(value),
                        new ObjectiveFunctionGradient(slope),
                        GoalType.MINIMIZE,
                        new InitialGuess(start))
                .getPoint();
        LeastSquaresProblem problem = new LeastSquaresBuilder()
                .start(near)
                .target(new double[start.length])
                .model(point -> Pair.create(
                        new ArrayRealVector(slope.value(point.toArray())), curvature(slope, point.toArray())))
                .maxEvaluations(2_000)
                .maxIterations(2_000)
                .build();
        return new LevenbergMarquardtOptimizer(100, 1e-15, 1e-15, 1e-15, 1e-300)
                .optimize(problem)
                .getPoint()
                .toArray();
    }

    /** The largest component of the slope [kN]. */
    double slope(double[] places) {
        return Arrays.stream(energy(places).getGradient()).map(Math::abs).max().orElseThrow();
    }

    /** The energy at a place [kJ]. */
    double value(double[] places) {
        return energy(places).getValue();
    }

    /** The tension in a cord, all of its strands together [kN]. */
    double tension(int cord, double[] places) {
        Cord one = cords.get(cord);
        return one.rate() * Math.max(0, length(one, variables(places)).getValue() - one.rest());
    }

    /** How hard all cords together pull on a place where they stop [kN]. */
    double pull(double[] stop, double[] places) {
        double[] sum = pulls(stop, places);
        return Math.sqrt(sum[0] * sum[0] + sum[1] * sum[1] + sum[2] * sum[2]);
    }

    /** The same as three components [kN]. */
    double[] pulls(double[] stop, double[] places) {
        double[] sum = new double[3];
        for (int i = 0; i < cords.size(); i++) {
            List<double[]> stops = cords.get(i).stops();
            int last = cords.get(i).ring() ? stops.size() : stops.size() - 1;
            double tension = tension(i, places);
            for (int j = 0; j < last; j++) {
                double[] from = stops.get(j);
                double[] to = stops.get((j + 1) % stops.size());
                if (Arrays.equals(from, stop)) {
                    add(sum, tension, from, to, places);
                }
                if (Arrays.equals(to, stop)) {
                    add(sum, tension, to, from, places);
                }
            }
        }
        return sum;
    }

    private static void add(double[] sum, double tension, double[] from, double[] to, double[] places) {
        double[] away = new double[3];
        double square = 0;
        for (int axis = 0; axis < 3; axis++) {
            away[axis] = coordinate(to, axis, places) - coordinate(from, axis, places);
            square += away[axis] * away[axis];
        }
        for (int axis = 0; axis < 3; axis++) {
            sum[axis] += tension * away[axis] / Math.sqrt(square);
        }
    }

    private static double coordinate(double[] stop, int axis, double[] places) {
        return stop.length == 1 ? places[3 * (int) stop[0] + axis] : stop[axis];
    }

    private static Array2DRowRealMatrix curvature(MultivariateVectorFunction slope, double[] places) {
        int n = places.length;
        double[][] rows = new double[n][n];
        for (int b = 0; b < n; b++) {
            double step = 1e-7;
            double[] up = places.clone();
            double[] down = places.clone();
            up[b] += step;
            down[b] -= step;
            double[] above = slope.value(up);
            double[] below = slope.value(down);
            for (int a = 0; a < n; a++) {
                rows[a][b] = (above[a] - below[a]) / (2 * step);
            }
        }
        return new Array2DRowRealMatrix(rows, false);
    }

    private static List<Gradient> variables(double[] places) {
        List<Gradient> variables = new ArrayList<>();
        for (int a = 0; a < places.length; a++) {
            variables.add(Gradient.variable(places.length, a, places[a]));
        }
        return variables;
    }

    private Gradient energy(double[] places) {
        List<Gradient> variables = variables(places);
        Gradient sum = Gradient.constant(places.length, 0);
        for (Cord cord : cords) {
            Gradient excess = length(cord, variables).subtract(cord.rest());
            if (excess.getValue() > 0) {
                sum = sum.add(excess.multiply(excess).multiply(cord.rate() / 2));
            }
        }
        for (int axis = 0; axis < 3; axis++) {
            sum = sum.subtract(variables.get(3 * (nodes - 1) + axis).multiply(load.get(axis)));
        }
        return sum;
    }

    private static Gradient length(Cord cord, List<Gradient> variables) {
        int stretches = cord.ring() ? cord.stops().size() : cord.stops().size() - 1;
        Gradient sum = Gradient.constant(variables.size(), 0);
        for (int j = 0; j < stretches; j++) {
            double[] from = cord.stops().get(j);
            double[] to = cord.stops().get((j + 1) % cord.stops().size());
            Gradient square = Gradient.constant(variables.size(), 0);
            for (int axis = 0; axis < 3; axis++) {
                Gradient difference = at(to, axis, variables).subtract(at(from, axis, variables));
                square = square.add(difference.multiply(difference));
            }
            sum = square.getValue() == 0 ? sum : sum.add(square.sqrt());
        }
        return sum;
    }

    private static Gradient at(double[] stop, int axis, List<Gradient> variables) {
        return stop.length == 1
                ? variables.get(3 * (int) stop[0] + axis)
                : Gradient.constant(variables.size(), stop[axis]);
    }
}
