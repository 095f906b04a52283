package thalweg.rig;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import thalweg.units.Angle;
import thalweg.units.Force;
import thalweg.units.Mass;

/**
 * Varies what is not known exactly about a loss: the stiffness of the strands, low, nominal and high; 0, 10 and 20 mm of
 * slack in the legs that survive, as uneven tying leaves it; the load at the aim and at both ends of its sway. It follows
 * each variant for as long as the first bounce may take.
 */
public final class FindPeakRange {

    /** Uneven tying [m]; our choice. */
    private static final double[] SLACKS = {0, 0.01, 0.02};

    /**
     * How much softer and stiffer a strand may be whose material is not in the table, in parts of what was stated; our
     * choice, about as wide as the widest in {@link StrandMaterial}.
     */
    private static final double SOFTER = 0.5;

    private static final double STIFFER = 2;

    /**
     * Error that a step may make, in parts of the way in which the stiffest spring takes up the load: coarser than for the
     * nominal peaks, since there are dozens of motions and what is varied moves the peaks by far more.
     */
    static final double PRECISION = 1e-3;

    /** Quarter periods of the softest spring in the time that is followed, doubled: one and a half bounces. */
    private static final double BOUNCES = 3 * Math.PI;

    private final RigAnswer answer;
    private final RigInput input;
    private final int points;

    private FindPeakRange(RigAnswer answer) {
        this.answer = answer;
        this.input = answer.input();
        this.points = input.points().size();
    }

    /** The range of the peaks of an answer. */
    public static PeakRange of(RigAnswer answer) {
        FindPeakRange find = new FindPeakRange(answer);
        return new PeakRange(IntStream.range(0, find.points)
                .filter(point -> answer.losses().get(point).held())
                .mapToObj(find::loss)
                .toList());
    }

    /** The peaks of all variants of one loss. */
    private static final class Tally {

        private final double[] low;
        private final double[] high;
        private boolean complete = true;
        private boolean rising;

        Tally(int points) {
            low = new double[points];
            high = new double[points];
            Arrays.fill(low, Double.POSITIVE_INFINITY);
        }

        void take(Optional<Motion.Peaks> variant) {
            complete = complete && variant.isPresent();
            variant.ifPresent(peaks -> {
                rising = rising || peaks.rising();
                for (int i = 0; i < low.length; i++) {
                    take(i, peaks.points()[i]);
                }
            });
        }

        void take(int point, double peak) {
            low[point] = Math.min(low[point], peak);
            high[point] = Math.max(high[point], peak);
        }
    }

    private PeakRange.Loss loss(int lost) {
        Optional<PeakForces> nominal =
                answer.losses().get(lost).aftermath().orElseThrow().peaks();
        Tally tally = new Tally(points);
        Network whole = LayStrands.of(input);
        for (double stiffness : stiffnesses()) {
            for (double slack : SLACKS) {
                if (slack == 0 || hasLegs(whole)) {
                    for (Angle toward : directions()) {
                        tally.take(peaks(whole, lost, stiffness, slack, toward));
                    }
                }
            }
        }
        List<PeakRange.OnPoint> onPoints = new ArrayList<>();
        for (int i = 0; i < points; i++) {
            String name = input.points().get(i).name();
            Optional<Force> known = nominal.flatMap(peaks -> peaks.on(name));
            int point = i;
            known.ifPresent(force -> tally.take(point, force.inKilonewtons()));
            if (i != lost && tally.high[i] > 0) {
                onPoints.add(new PeakRange.OnPoint(
                        name, known, Force.kilonewtons(tally.low[i]), Force.kilonewtons(tally.high[i])));
            }
        }
        return new PeakRange.Loss(input.points().get(lost).name(), onPoints, tally.complete, tally.rising);
    }

    private Optional<Motion.Peaks> peaks(Network whole, int lost, double stiffness, double slack, Angle toward) {
        Vector3 down = input.load().direction(toward);
        Network intact = whole.with(varied(whole.strands(), lost, stiffness, slack));
        Vector3 from = FindEquilibrium.of(
                        intact, down.times(input.load().weight().inKilonewtons()))
                .master();
        Network left = LayStrands.left(input, lost, from).orElseThrow();
        Network after = Splice.of(left.with(varied(left.strands(), lost, stiffness, slack)))
                .network();
        HangingMass mass = new HangingMass(after, input.load(), down);
        return Motion.of(mass, input.load(), points, PRECISION, seconds(after, from, down));
    }

    /** Strands with another stiffness, all by one factor, and with slack in the legs of points that are not lost. */
    private List<Strand> varied(List<Strand> strands, int lost, double stiffness, double slack) {
        double times = stiffness / input.rig().stiffness().inKilonewtons();
        return strands.stream()
                .map(strand -> strand.varied(times, isLegOfAnother(strand, lost) ? slack : 0))
                .toList();
    }

    private boolean hasLegs(Network network) {
        return network.strands().stream()
                .anyMatch(
                        strand -> StrandNames.leggedPoint(input, strand.label()).isPresent());
    }

    private boolean isLegOfAnother(Strand strand, int lost) {
        return StrandNames.leggedPoint(input, strand.label())
                .filter(point -> point != lost)
                .isPresent();
    }

    /** Until the free fall is over and the softest spring has swung one and a half times; at least the usual time. */
    private double seconds(Network after, Vector3 from, Vector3 down) {
        double softest = after.strands().stream()
                .mapToDouble(strand -> strand.count() * strand.stiffnessKilonewtons() / strand.unloadedMetres())
                .min()
                .orElseThrow();
        double rope = input.load()
                .ropeStiffness()
                .map(known -> input.load().ropeOut().metres() / known.inKilonewtons())
                .orElse(0.0);
        double spring = 1 / (1 / softest + rope);
        double tonnes = input.load().weight().inKilonewtons() / Mass.STANDARD_GRAVITY;
        double fall = Math.sqrt(2 * FreeTravel.of(after, from, down) / Mass.STANDARD_GRAVITY);
        return Math.max(Motion.WINDOW_SECONDS, fall + BOUNCES * Math.sqrt(tonnes / spring));
    }

    /** What a strand may stretch like [kN]: what its material may, if it is one of the table, and else half and twice. */
    private Set<Double> stiffnesses() {
        double nominal = input.rig().stiffness().inKilonewtons();
        List<StrandMaterial> materials = Arrays.stream(StrandMaterial.values())
                .filter(material -> material.nominal().inKilonewtons() == nominal)
                .toList();
        double low = materials.stream()
                .mapToDouble(material -> material.low().inKilonewtons())
                .min()
                .orElse(SOFTER * nominal);
        double high = materials.stream()
                .mapToDouble(material -> material.high().inKilonewtons())
                .max()
                .orElse(STIFFER * nominal);
        return new LinkedHashSet<>(List.of(nominal, low, high));
    }

    private Set<Angle> directions() {
        double toward = input.load().toward().degrees();
        double sway = input.load().sway().degrees();
        return new LinkedHashSet<>(List.of(new Angle(toward), new Angle(toward - sway), new Angle(toward + sway)));
    }
}
