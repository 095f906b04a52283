package thalweg.rig;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.BracketedUnivariateSolver;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.exception.LocalizedCoreFormats;
import org.hipparchus.exception.MathIllegalStateException;
import org.hipparchus.exception.MathRuntimeException;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.ODEStateAndDerivative;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.events.Action;
import org.hipparchus.ode.events.AdaptableInterval;
import org.hipparchus.ode.events.ODEEventDetector;
import org.hipparchus.ode.events.ODEEventHandler;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;
import org.hipparchus.ode.sampling.ODEStateInterpolator;
import thalweg.units.Mass;

/**
 * The undamped motion of a mass that is let go, and the largest pulls on the way.
 *
 * <p>The method of Dormand and Prince of order 8, which ends its steps where a strand becomes taut or slack, since the
 * force has a kink there. Places are measured from the start, so that their rounding is that of the way and not that of
 * the rope's length.
 *
 * @see "Hairer, Nørsett and Wanner, Solving Ordinary Differential Equations I, 2nd edition, II.5 and II.6"
 */
final class Motion implements OrdinaryDifferentialEquation {

    /** For how long it is followed unless somebody asks for more [s]. */
    static final double WINDOW_SECONDS = 2.0;

    /** Error that a step may make, in parts of the way in which the stiffest spring takes up the load. */
    static final double PRECISION = 1e-6;

    /**
     * A motion in which the mass must be put in more places than these is not followed: some ten times as many as it
     * takes for stiff slings and a light person. On a rope each place takes a search.
     */
    private static final int MOST_DIRECT = 200_000;

    private static final int MOST_ON_A_ROPE = 40_000;

    /** No step is longer [s], so that no bounce falls between two of them. */
    private static final double LONGEST_STEP_SECONDS = 0.05;

    /** Error that a step may make besides, in parts of the way and of the speed so far. */
    private static final double OF_THE_WAY = 1e-10;

    private static final double SHORTEST_STEP_SECONDS = 1e-13;

    /** At so many places within a step the pulls are looked at. */
    private static final int LOOKS = 6;

    private final HangingMass mass;

    /** In tonnes, so that a force in kN accelerates it in m/s². */
    private final double tonnes;

    private final double precision;
    private final Peak[] points;
    private final Peak[] strands;
    private final Peak held = new Peak();

    /** The points that the pulls on them are counted for; empty where a pull is counted as it is. */
    private final List<RigPoint> counting;

    private final Peak[] counted;
    private final double seconds;
    private final int mostMoves;
    private int moves;
    private double drift;

    private Motion(
            HangingMass mass, RigLoad load, int points, List<RigPoint> counting, double precision, double seconds) {
        this.mass = mass;
        this.tonnes = load.weight().inKilonewtons() / Mass.STANDARD_GRAVITY;
        this.precision = precision;
        this.seconds = seconds;
        int mostInWindow = load.ropeOut().metres() > 0 ? MOST_ON_A_ROPE : MOST_DIRECT;
        this.mostMoves = (int) (mostInWindow * Math.ceil(seconds / WINDOW_SECONDS));
        this.points = peaks(points);
        this.counting = counting;
        this.counted = this.points.clone();
        for (int i = 0; i < counting.size(); i++) {
            if (counting.get(i).traits().bolt().isPresent()) {
                counted[i] = new Peak();
            }
        }
        this.strands = peaks(mass.strands());
    }

    private static Peak[] peaks(int count) {
        Peak[] peaks = new Peak[count];
        Arrays.setAll(peaks, i -> new Peak());
        return peaks;
    }

    /**
     * The largest forces on the way.
     *
     * @param points on each point [kN]
     * @param counted on each point, as it counts against its strength: {@link RigPoint#counted} [kN]
     * @param strands in one of the parallel strands of each, the rope's last where there is one [kN]
     * @param held on the master by all that holds it [kN]
     * @param rising whether a point is pulled harder at the end than ever before, or nothing has pulled at all while the
     *     mass falls, so that the peak is still to come
     * @param drift of the energy, which should keep to what it was [kJ]
     */
    // Made for one reader of this package and never compared.
    @SuppressWarnings("ArrayRecordComponent")
    record Peaks(double[] points, double[] counted, double[] strands, double held, boolean rising, double drift) {}

    /**
     * Lets the mass go from where it hangs, at rest.
     *
     * @param points how many points there are
     * @param precision such as {@link #PRECISION}
     * @return nothing where the motion is too fast to be followed
     */
    static Optional<Peaks> of(HangingMass mass, RigLoad load, int points, double precision) {
        return of(mass, load, points, precision, WINDOW_SECONDS);
    }

    /** The same for the points of a rig, whose pulls are counted against their strengths as well. */
    static Optional<Peaks> of(HangingMass mass, RigInput input) {
        return of(mass, input.load(), input.points().size(), input.points(), PRECISION, WINDOW_SECONDS);
    }

    /**
     * The same over another time.
     *
     * @param seconds for how long it is followed, above 0 [s]
     */
    static Optional<Peaks> of(HangingMass mass, RigLoad load, int points, double precision, double seconds) {
        return of(mass, load, points, List.of(), precision, seconds);
    }

    private static Optional<Peaks> of(
            HangingMass mass, RigLoad load, int points, List<RigPoint> counting, double precision, double seconds) {
        for (boolean stopping : new boolean[] {true, false}) {
            Motion motion = new Motion(mass, load, points, counting, precision, seconds);
            try {
                motion.follow(load, stopping);
                return Optional.of(motion.result());
            } catch (MathRuntimeException e) {
                if (motion.moves > motion.mostMoves) {
                    return Optional.empty();
                }
                mass.moveTo(mass.start().x(), mass.start().y(), mass.start().z());
            }
        }
        return Optional.empty();
    }

    private Peaks result() {
        return new Peaks(values(points), values(counted), values(strands), held.largest(), rising(), drift);
    }

    private boolean rising() {
        boolean stillFalling = Arrays.stream(points).allMatch(point -> point.largest() == 0);
        return stillFalling
                || Arrays.stream(points).anyMatch(Peak::rising)
                || Arrays.stream(counted).anyMatch(Peak::rising);
    }

    private static double[] values(Peak[] peaks) {
        return Arrays.stream(peaks).mapToDouble(Peak::largest).toArray();
    }

    /**
     * @param stopping whether steps end where a strand becomes taut or slack; without, they are shortened there until they
     *     are exact, which is slower but knows no two strands that do so at one time
     */
    private void follow(RigLoad load, boolean stopping) {
        double give = load.weight().inKilonewtons() / mass.stiffest();
        double fastest = Math.sqrt(mass.stiffest() / tonnes);
        double way = precision * give;
        double speed = way * fastest;
        DormandPrince853Integrator integrator = new DormandPrince853Integrator(
                SHORTEST_STEP_SECONDS,
                LONGEST_STEP_SECONDS,
                new double[] {way, way, way, speed, speed, speed},
                new double[] {OF_THE_WAY, OF_THE_WAY, OF_THE_WAY, OF_THE_WAY, OF_THE_WAY, OF_THE_WAY});
        integrator.setInitialStepSize(Math.min(LONGEST_STEP_SECONDS, 0.01 / fastest));
        for (int i = 0; i < mass.strands() && stopping; i++) {
            integrator.addEventDetector(new Tightening(i));
        }
        integrator.addStepHandler(this::look);
        double energy = energy(new double[6]);
        look(0, new double[6]);
        ODEStateAndDerivative end = integrator.integrate(this, new ODEState(0, new double[6]), seconds);
        drift = energy(end.getPrimaryState()) - energy;
    }

    private double energy(double[] state) {
        moveTo(state);
        double square = state[3] * state[3] + state[4] * state[4] + state[5] * state[5];
        return mass.potential() + tonnes / 2 * square;
    }

    private void look(ODEStateInterpolator step) {
        ODEStateAndDerivative from = step.getPreviousState();
        ODEStateAndDerivative to = step.getCurrentState();
        Between way = new Between(from, to);
        for (int i = 1; i < LOOKS; i++) {
            double share = (double) i / LOOKS;
            look(from.getTime() + (to.getTime() - from.getTime()) * share, way.at(share));
        }
        look(to.getTime(), to.getPrimaryState());
    }

    private void look(double time, double[] state) {
        moveTo(state);
        for (int i = 0; i < points.length; i++) {
            points[i].take(time, mass.pullOn(i));
        }
        for (int i = 0; i < counting.size(); i++) {
            if (counted[i] != points[i]) {
                counted[i].take(time, counting.get(i).counted(mass.pull(i)));
            }
        }
        held.take(time, mass.held());
        for (int i = 0; i < strands.length; i++) {
            strands[i].take(time, mass.tension(i));
        }
    }

    private void moveTo(double[] state) {
        moves++;
        if (moves > mostMoves) {
            throw new MathIllegalStateException(LocalizedCoreFormats.MAX_COUNT_EXCEEDED, mostMoves);
        }
        Vector3 start = mass.start();
        mass.moveTo(start.x() + state[0], start.y() + state[1], start.z() + state[2]);
    }

    @Override
    public int getDimension() {
        return 6;
    }

    @Override
    public double[] computeDerivatives(double time, double[] state) {
        moveTo(state);
        return new double[] {
            state[3], state[4], state[5], mass.force(0) / tonnes, mass.force(1) / tonnes, mass.force(2) / tonnes
        };
    }

    /** Ends a step where a strand becomes taut or slack. */
    private final class Tightening implements ODEEventDetector {

        private static final double TO_THE_SECOND = 1e-11;
        private static final int MOST_TRIALS = 60;

        private final int strand;

        Tightening(int strand) {
            this.strand = strand;
        }

        @Override
        public AdaptableInterval getMaxCheckInterval() {
            return AdaptableInterval.of(LONGEST_STEP_SECONDS);
        }

        @Override
        public int getMaxIterationCount() {
            return MOST_TRIALS;
        }

        @Override
        public BracketedUnivariateSolver<UnivariateFunction> getSolver() {
            return new BracketingNthOrderBrentSolver(0, TO_THE_SECOND, 0, 5);
        }

        @Override
        public ODEEventHandler getHandler() {
            return (state, detector, increasing) -> Action.RESET_DERIVATIVES;
        }

        @Override
        public double g(ODEStateAndDerivative state) {
            moveTo(state.getPrimaryState());
            return mass.tautness(strand);
        }
    }
}
