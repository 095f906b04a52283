package thalweg.rig;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import thalweg.units.Angle;

/** Computes a rig: at rest at the aim, across its sector, and against the checklist. */
public final class Analyze {

    /** A strand or point that carries less than this part of the load counts as slack. */
    static final double LOADED = 1e-6;

    /** Between directions that are looked at for the worst, at most [°]. */
    private static final double FINE_STEP_DEGREES = 0.1;

    /** Two figures nearer than this, in parts of either, are equals: rounding must not choose the direction. */
    private static final double TIE = 1e-9;

    private static final int HALF = RigSector.DIRECTIONS / 2;

    private final RigInput input;
    private final RestState rest;

    /** Into how many fine steps each step between reported directions is divided; 0 where the load does not sway. */
    private final int finePerStep;

    /** What was solved so far, by fine steps from the aim. */
    private final Map<Integer, RigState> solved = new TreeMap<>();

    private Analyze(RigInput input) {
        this.input = input;
        this.rest = new RestState(input);
        this.finePerStep = (int) Math.ceil(input.load().sway().degrees() / HALF / FINE_STEP_DEGREES - TIE);
    }

    /** What the model says about a rig. */
    public static RigAnswer of(RigInput input) {
        return new Analyze(input).answer();
    }

    private RigAnswer answer() {
        List<RigState> reported = IntStream.rangeClosed(-HALF, HALF)
                .mapToObj(step -> state(step * finePerStep))
                .toList();
        RigState steady = reported.get(HALF);
        List<WorstForce> worst = new ArrayList<>();
        for (int i = 0; i < input.points().size(); i++) {
            int point = i;
            RigState at = highest(state -> state.points().get(point).force().inKilonewtons());
            PointForce force = at.points().get(point);
            worst.add(new WorstForce(force.point(), force.force(), at.direction()));
        }
        RigState widest = highest(Analyze::degrees);
        RigSector sector =
                new RigSector(reported, worst, widest.angle().map(angle -> new WidestAngle(angle, widest.direction())));
        Optional<FrictionRange> friction = input.rig().sliding().map(sliding -> FindFriction.of(input));
        List<PointLoss> losses = FindLosses.of(input, steady);
        List<StrandCut> cuts = FindLosses.cuts(input, losses);
        List<LetterCheck> checks = List.of(
                CheckEqualised.of(steady, sector, friction),
                CheckAngle.of(input.rig().kind(), steady, sector),
                CheckRedundant.of(losses, cuts),
                CheckExtension.of(losses),
                CheckSolid.of(input, sector));
        List<PartSafety> safety = FindSafety.of(input, sector, worstTensions(steady), losses);
        return new RigAnswer(input, steady, sector, friction, losses, cuts, checks, safety, FindMaterial.of(input));
    }

    /** The hardest pull in each strand, in the order in which they are laid. */
    private List<FindSafety.WorstTension> worstTensions(RigState steady) {
        List<FindSafety.WorstTension> worst = new ArrayList<>();
        for (int i = 0; i < steady.strands().size(); i++) {
            int strand = i;
            RigState at = highest(state -> state.strands().get(strand).tension().inKilonewtons());
            StrandPull pull = at.strands().get(strand);
            worst.add(new FindSafety.WorstTension(pull.label(), pull.count(), pull.tension(), at.direction()));
        }
        return worst;
    }

    private static double degrees(RigState state) {
        return state.angle().map(Angle::degrees).orElse(0.0);
    }

    /**
     * The state with the highest figure: the best of the reported directions, then the best between its neighbours.
     *
     * <p>Between two neighbours of the best, which are 18 degrees apart at most, the figure is taken to rise and then to
     * fall.
     */
    private RigState highest(ToDoubleFunction<RigState> figure) {
        int best = 0;
        for (int step : outwards()) {
            best = better(step * finePerStep, best, figure);
        }
        int low = Math.max(best - finePerStep, -HALF * finePerStep);
        int high = Math.min(best + finePerStep, HALF * finePerStep);
        while (high - low > 2) {
            int left = low + (high - low) / 3;
            int right = high - (high - low) / 3;
            int better = Math.abs(left) <= Math.abs(right) ? better(right, left, figure) : better(left, right, figure);
            if (better == right) {
                low = left;
            } else {
                high = right;
            }
        }
        List<Integer> last = IntStream.rangeClosed(low, high)
                .boxed()
                .sorted(Comparator.comparingInt(Math::abs))
                .toList();
        int highest = last.get(0);
        for (int fine : last) {
            highest = better(fine, highest, figure);
        }
        return state(better(best, highest, figure));
    }

    private int better(int candidate, int before, ToDoubleFunction<RigState> figure) {
        double figureBefore = figure.applyAsDouble(state(before));
        return figure.applyAsDouble(state(candidate)) > figureBefore + TIE * Math.abs(figureBefore)
                ? candidate
                : before;
    }

    /** 0, -1, 1, -2, 2 and so on: among equals the direction nearest to the aim comes first. */
    private static List<Integer> outwards() {
        return IntStream.rangeClosed(-HALF, HALF)
                .boxed()
                .sorted(Comparator.comparingInt(Math::abs))
                .toList();
    }

    private RigState state(int fineSteps) {
        return solved.computeIfAbsent(fineSteps, steps -> rest.under(direction(steps)));
    }

    private Angle direction(int fineSteps) {
        double toward = input.load().toward().degrees();
        if (fineSteps == 0) {
            return new Angle(toward);
        }
        return new Angle(toward + input.load().sway().degrees() * fineSteps / (HALF * finePerStep));
    }
}
