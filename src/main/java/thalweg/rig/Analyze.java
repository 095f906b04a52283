package thalweg.rig;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import thalweg.units.Angle;
import thalweg.units.Force;

/** Computes a rig: at rest at the aim, across its sector, and against the checklist. */
public final class Analyze {

    /** A strand or point that carries less than this part of the load counts as slack. */
    static final double LOADED = 1e-6;

    /** Between directions that are looked at for the worst, at most [°]. */
    private static final double FINE_STEP_DEGREES = 0.1;

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
        this.finePerStep = (int) Math.ceil(input.load().sway().degrees() / HALF / FINE_STEP_DEGREES - HighestState.TIE);
    }

    /** What the model says about a rig. */
    public static RigAnswer of(RigInput input) {
        return new Analyze(input).answer();
    }

    /** The pull that counts most on each point over the sector, in the order of the input, and nothing else of the answer. */
    static List<CountedForce> counted(RigInput input) {
        Analyze analyze = new Analyze(input);
        return analyze.countedForces(analyze.worstForces());
    }

    /** The hardest pull on each point over the sector, in the order of the input, and nothing else of the answer. */
    static List<WorstForce> worst(RigInput input) {
        return new Analyze(input).worstForces();
    }

    private RigAnswer answer() {
        List<RigState> reported = IntStream.rangeClosed(-HALF, HALF)
                .mapToObj(step -> state(step * finePerStep))
                .toList();
        RigState steady = reported.get(HALF);
        RigState widest = highest(Analyze::degrees);
        List<WorstForce> worst = worstForces();
        RigSector sector = new RigSector(
                reported,
                worst,
                countedForces(worst),
                widest.angle().map(angle -> new WidestAngle(angle, widest.direction())));
        Optional<FrictionRange> friction = friction();
        FrictionAllowance allowance = new FrictionAllowance(steady, friction);
        List<PointLoss> losses = FindLosses.of(input, steady);
        List<StrandCut> cuts = FindLosses.cuts(input, losses);
        RigMaterial material = FindMaterial.of(input);
        List<LetterCheck> checks = List.of(
                CheckEqualised.of(steady, sector, friction),
                CheckAngle.of(input.rig().kind(), steady, sector),
                CheckRedundant.of(losses, cuts),
                CheckExtension.of(losses),
                CheckSolid.of(input, sector, allowance),
                CheckTimely.of(material));
        List<PartSafety> safety = FindSafety.of(input, sector, worstTensions(steady), losses, allowance);
        return new RigAnswer(
                input,
                steady,
                sector,
                friction,
                losses,
                cuts,
                checks,
                safety,
                material,
                FindRedirect.of(input, steady));
    }

    private RigState highest(ToDoubleFunction<RigState> figure) {
        return new HighestState(this::state, HALF, finePerStep).of(figure);
    }

    private List<WorstForce> worstForces() {
        return IntStream.range(0, input.points().size())
                .mapToObj(this::worstForce)
                .toList();
    }

    private WorstForce worstForce(int point) {
        RigState at = highest(state -> state.points().get(point).force().inKilonewtons());
        PointForce force = at.points().get(point);
        return new WorstForce(force.point(), force.force(), at.direction());
    }

    /** Only of a bolt of two strengths is the pull that counts most another one than the hardest. */
    private List<CountedForce> countedForces(List<WorstForce> worst) {
        return IntStream.range(0, worst.size())
                .mapToObj(point -> input.points().get(point).traits().bolt().isPresent()
                        ? countedForce(point)
                        : CountedForce.of(worst.get(point)))
                .toList();
    }

    private CountedForce countedForce(int number) {
        RigPoint point = input.points().get(number);
        RigState at = highest(state -> point.counted(state.points().get(number).pull()));
        PointForce force = at.points().get(number);
        return new CountedForce(
                point.name(), force.force(), Force.kilonewtons(point.counted(force.pull())), at.direction());
    }

    /** The hardest pull in each strand, in the order in which they are laid; of a sling in the side that bears most. */
    private List<FindSafety.WorstTension> worstTensions(RigState steady) {
        Map<String, FindSafety.WorstTension> worst = new LinkedHashMap<>();
        for (int i = 0; i < steady.strands().size(); i++) {
            int strand = i;
            RigState at = highest(state -> state.strands().get(strand).tension().inKilonewtons());
            StrandPull pull = at.strands().get(strand);
            worst.merge(
                    pull.label(),
                    new FindSafety.WorstTension(pull.label(), pull.count(), pull.tension(), at.direction()),
                    FindSafety.WorstTension::harder);
        }
        return List.copyOf(worst.values());
    }

    private Optional<FrictionRange> friction() {
        return input.rig()
                .sliding()
                .map(sliding -> FindFriction.of(input))
                .or(() -> input.rig().limiters().map(limiters -> FindSideFriction.of(input)));
    }

    private static double degrees(RigState state) {
        return state.angle().map(Angle::degrees).orElse(0.0);
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
