package thalweg.rig;

import java.util.ArrayList;
import java.util.List;

/**
 * Finds where a network comes to rest: the minimum of its convex {@link Energy}.
 *
 * <p>Newton's method on the piecewise smooth energy, with a trust in the step no longer than the network is wide and a
 * line search by bisection for the weak Wolfe conditions. Curvature that is missing, because strands are slack or
 * lie in one line, is made up by a small multiple of the unit matrix. The forces are unique; the places of slack nodes
 * need not be.
 *
 * @see "Nocedal and Wright, Numerical Optimization, 2nd edition, 3.1 and 3.4"
 */
final class FindEquilibrium {

    private static final int MOST_STEPS = 60;
    private static final int MOST_TRIALS = 60;
    private static final int IDLE_STEPS = 4;

    /** Residual at which nothing more is to be gained, in parts of the load. */
    private static final double FINE = 1e-14;

    /** Residual of an answer that nobody can tell from the exact one, in parts of the load. */
    private static final double CLOSE = 1e-12;

    /** Residual of a good answer, in parts of the load. */
    static final double FAIR = 1e-9;

    /** Rounding of stretches of length 0 in parts of the width, for the first try, and for the patient ones. */
    private static final double ROUNDING = 1e-9;

    private static final double[] PATIENT_ROUNDINGS = {1e-3, 1e-4, 1e-5, 1e-6, 1e-7, 1e-8, ROUNDING};

    /** The stiffness from which strands are made stiffer, in parts of the load, and by how much at a time. */
    private static final double SOFT = 10;

    private static final double STIFFER = 8;

    private final Network network;
    private final Energy energy;
    private final double load;
    private final double goal;
    private final double width;
    private final double noise;
    private final double[] gradient;
    private final double[][] curvature;
    private final double[] trialGradient;
    private final double[] trial;
    private final double[] step;
    private final double[][] lower;
    private final double[] places;
    private final double[] start;
    private final double[] best;
    private double energyHere;
    private double trialEnergy;
    private int steps;

    /**
     * A search that can be repeated.
     *
     * @param energy of the network, whose fixed nodes may be moved between one search and the next
     * @param load the force by whose size residuals are judged, above 0 [kN]
     * @param goal the residual at which the search ends, in parts of the load
     */
    FindEquilibrium(Network network, Energy energy, double load, double goal) {
        this.network = network;
        this.energy = energy;
        this.load = load;
        this.goal = goal;
        this.width = width(network);
        this.noise = noise(network);
        this.places = Energy.flat(network.free());
        this.gradient = new double[energy.size()];
        this.curvature = new double[energy.size()][energy.size()];
        this.trialGradient = new double[energy.size()];
        this.trial = new double[energy.size()];
        this.step = new double[energy.size()];
        this.lower = new double[energy.size()][energy.size()];
        this.start = new double[energy.size()];
        this.best = new double[energy.size()];
    }

    /**
     * The state of rest.
     *
     * @param network whose free nodes start anywhere, best near where they end
     * @param load on the master, not of length 0 [kN]
     */
    static Equilibrium of(Network network, Vector3 load) {
        return of(network, Pull.of(load));
    }

    /** The state of rest under a pull that may be directed to a place. */
    static Equilibrium of(Network network, Pull load) {
        FindEquilibrium search = new FindEquilibrium(
                network, new Energy(network, load), load.force().length(), FINE);
        double residual = search.run();
        if (!search.bearable(residual)) {
            throw new AssertionError("no state of rest was found for " + network);
        }
        return search.result(residual);
    }

    /** Where the free nodes stand, three coordinates each [m]; where the last search ended, and the next begins. */
    double[] places() {
        return places;
    }

    /** Whether a state with that much force left over is an answer at all. */
    boolean bearable(double residual) {
        return residual <= 1e-5 * load + noise;
    }

    /** Searches from where the free nodes stand; the force that is left over [kN]. */
    double run() {
        copy(places, start);
        double residual = descend(ROUNDING);
        if (!fair(residual)) {
            copy(start, places);
            residual = stiffen(ROUNDING);
        }
        if (!fair(residual)) {
            copy(start, places);
            for (double rounding : PATIENT_ROUNDINGS) {
                residual = rounding == PATIENT_ROUNDINGS[0] ? stiffen(rounding) : descend(rounding);
            }
        }
        return residual;
    }

    /**
     * Lets the network swing on soft strands, then makes them stiffer by and by. Stiff strands alone hold the master in a
     * narrow curved valley of the energy, along which straight steps must be short.
     */
    private double stiffen(double rounding) {
        double stiffest = network.strands().stream()
                .mapToDouble(strand -> strand.count() * strand.stiffnessKilonewtons())
                .max()
                .orElseThrow();
        double part = Math.min(1, SOFT * load / stiffest);
        while (part < 1) {
            energy.soften(part);
            descend(rounding);
            part *= STIFFER;
        }
        energy.soften(1);
        return descend(rounding);
    }

    private boolean fair(double residual) {
        return residual <= FAIR * load + noise;
    }

    /** Whether what is left over is small, and so near to what rounding makes of it that another step gains nothing. */
    private boolean isRounding(double residual) {
        return residual <= Math.min(noise, CLOSE * load);
    }

    /** Newton steps until nothing is gained; the residual that is left [kN]. */
    private double descend(double rounding) {
        energy.roundOff(rounding * width);
        double least = Double.POSITIVE_INFINITY;
        copy(places, best);
        int idle = 0;
        for (int i = 0; i < MOST_STEPS; i++) {
            energyHere = energy.curvatureAt(places, gradient, curvature);
            double residual = largest(gradient);
            if (residual < least) {
                idle = residual < 0.5 * least ? 0 : idle;
                least = residual;
                copy(places, best);
            }
            boolean enough = least <= goal * load || isRounding(least) || (fair(least) && idle++ >= IDLE_STEPS);
            if (enough || !move()) {
                break;
            }
            steps++;
        }
        copy(best, places);
        return least;
    }

    private static void copy(double[] from, double[] to) {
        System.arraycopy(from, 0, to, 0, to.length);
    }

    private boolean move() {
        newtonStep();
        double slope = dot(gradient, step);
        if (!(slope < 0)) {
            return false;
        }
        double allowance = 1e-14 * (Math.abs(energyHere) + load * width);
        double low = 0;
        double high = Double.POSITIVE_INFINITY;
        double length = 1;
        for (int i = 0; i < MOST_TRIALS; i++) {
            double slopeThere = tryStep(length);
            boolean tooFar = slopeThere > 0
                    && trialEnergy > energyHere + 1e-4 * length * slope
                    && !(slopeThere <= -0.5 * slope && trialEnergy <= energyHere + allowance);
            if (tooFar) {
                high = length;
            } else if (slopeThere < 0.9 * slope) {
                low = length;
            } else {
                break;
            }
            length = Double.isInfinite(high) ? 2 * low : (low + high) / 2;
        }
        copy(trial, places);
        return true;
    }

    private double tryStep(double length) {
        for (int a = 0; a < trial.length; a++) {
            trial[a] = places[a] + length * step[a];
        }
        trialEnergy = energy.slopeAt(trial, trialGradient);
        return dot(trialGradient, step);
    }

    private void newtonStep() {
        double trace = 0;
        for (int a = 0; a < step.length; a++) {
            trace += curvature[a][a];
        }
        double lift = trace > 0 ? 1e-13 * trace : load / width;
        while (!solve(lift)) {
            lift *= 100;
        }
        double size = Math.sqrt(dot(step, step));
        if (size > width) {
            for (int a = 0; a < step.length; a++) {
                step[a] *= width / size;
            }
        }
    }

    /** Cholesky's decomposition of curvature + lift, beside it; false where that is not positive enough. */
    private boolean solve(double lift) {
        int n = step.length;
        for (int a = 0; a < n; a++) {
            for (int b = 0; b <= a; b++) {
                double sum = curvature[a][b] + (a == b ? lift : 0);
                for (int c = 0; c < b; c++) {
                    sum -= lower[a][c] * lower[b][c];
                }
                if (a == b) {
                    if (!(sum > 0.01 * lift)) {
                        return false;
                    }
                    lower[a][a] = Math.sqrt(sum);
                } else {
                    lower[a][b] = sum / lower[b][b];
                }
            }
        }
        for (int a = 0; a < n; a++) {
            double sum = -gradient[a];
            for (int b = 0; b < a; b++) {
                sum -= lower[a][b] * step[b];
            }
            step[a] = sum / lower[a][a];
        }
        for (int a = n - 1; a >= 0; a--) {
            double sum = step[a];
            for (int b = a + 1; b < n; b++) {
                sum -= lower[b][a] * step[b];
            }
            step[a] = sum / lower[a][a];
        }
        return true;
    }

    private Equilibrium result(double residual) {
        List<Vector3> free = new ArrayList<>();
        for (int i = 0; i < places.length; i += 3) {
            free.add(new Vector3(places[i], places[i + 1], places[i + 2]));
        }
        List<Double> lengths = new ArrayList<>();
        for (int i = 0; i < network.strands().size(); i++) {
            lengths.add(energy.length(i, places));
        }
        return new Equilibrium(network.startingAt(free), lengths, ROUNDING * width, residual, steps);
    }

    /** The longest of anything in it [m]. */
    private static double width(Network network) {
        double width = 0;
        for (Strand strand : network.strands()) {
            width = Math.max(width, strand.unloadedMetres());
        }
        Vector3 first = network.fixed().get(0);
        for (Vector3 place : network.fixed()) {
            width = Math.max(width, place.distance(first));
        }
        for (Vector3 place : network.free()) {
            width = Math.max(width, place.distance(first));
        }
        return width;
    }

    /** What rounding of places to doubles can do to a force [kN]. */
    private static double noise(Network network) {
        double farthest = 0;
        for (Vector3 place : network.fixed()) {
            farthest = Math.max(farthest, place.length());
        }
        double noise = 0;
        for (Strand strand : network.strands()) {
            double spring = strand.count() * strand.stiffnessKilonewtons() / strand.unloadedMetres();
            noise += 16 * Math.ulp(farthest + strand.unloadedMetres()) * spring;
        }
        return noise;
    }

    private static double largest(double[] numbers) {
        double largest = 0;
        for (double number : numbers) {
            largest = Math.max(largest, Math.abs(number));
        }
        return largest;
    }

    private static double dot(double[] one, double[] other) {
        double sum = 0;
        for (int a = 0; a < one.length; a++) {
            sum += one[a] * other[a];
        }
        return sum;
    }
}
