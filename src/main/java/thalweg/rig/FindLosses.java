package thalweg.rig;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import thalweg.units.Force;
import thalweg.units.Length;

/** Lets each point go in turn, and cuts each strand, from rest at the aim. */
final class FindLosses {

    private final RigInput input;
    private final RigState steady;
    private final Vector3 down;

    private FindLosses(RigInput input, RigState steady) {
        this.input = input;
        this.steady = steady;
        this.down = input.load().direction(input.load().toward());
    }

    /** The loss of each point, in the order of the input. */
    static List<PointLoss> of(RigInput input, RigState steady) {
        FindLosses find = new FindLosses(input, steady);
        return IntStream.range(0, input.points().size())
                .mapToObj(i -> new PointLoss(
                        input.points().get(i).name(),
                        LayStrands.left(input, i, steady.master()).map(find::aftermath)))
                .toList();
    }

    /** The cut of each strand, in the order in which they are laid; a sling is one strand, and a cut of any side opens it. */
    static List<StrandCut> cuts(RigInput input, List<PointLoss> losses) {
        List<StrandCut> cuts = new ArrayList<>();
        Set<String> labels = new HashSet<>();
        for (Strand strand : LayStrands.of(input).strands()) {
            if (labels.add(strand.label())) {
                cuts.add(StrandNames.leggedPoint(input, strand.label())
                        .or(() -> StrandNames.slungPoint(input, strand.label()))
                        .map(point -> asLoss(strand, losses.get(point)))
                        .orElseGet(() -> alone(strand)));
            }
        }
        return cuts;
    }

    private static StrandCut asLoss(Strand leg, PointLoss loss) {
        return new StrandCut(leg.label(), loss.held(), Optional.of(loss.point()));
    }

    /** One strand that is cut where everything hangs on it: what runs beside it holds, unless it is the same loop. */
    private static StrandCut alone(Strand strand) {
        return new StrandCut(strand.label(), !strand.closed() && strand.count() > 1, Optional.empty());
    }

    private Aftermath aftermath(Network left) {
        RigState rest = new RestState(input, left).under(input.load().toward());
        Vector3 way = rest.master().minus(steady.master());
        double drop = way.dot(down);
        Splice spliced = Splice.of(left);
        Optional<PeakForces> peaks = peaks(spliced);
        return new Aftermath(
                rest,
                new Length(FreeTravel.of(spliced.network(), steady.master(), down)),
                new Length(drop),
                new Length(way.minus(down.times(drop)).length()),
                peaks,
                CheckStrength.of(input, peaks));
    }

    private Optional<PeakForces> peaks(Splice left) {
        HangingMass mass = new HangingMass(left.network(), input.load(), down);
        return Motion.of(mass, input).map(peaks -> forces(left, peaks));
    }

    private PeakForces forces(Splice spliced, Motion.Peaks peaks) {
        Network left = spliced.whole();
        double[] tensions = spliced.tensions(peaks.strands());
        List<PeakForces.OnPoint> onPoints = IntStream.range(0, input.points().size())
                .filter(point -> left.strands().stream()
                        .anyMatch(strand -> Arrays.stream(left.nodesOf(point))
                                .anyMatch(node -> strand.path().contains(node))))
                .mapToObj(point -> new PeakForces.OnPoint(
                        input.points().get(point).name(),
                        Force.kilonewtons(peaks.points()[point]),
                        Force.kilonewtons(peaks.counted()[point])))
                .toList();
        Map<String, Double> hardest = new LinkedHashMap<>();
        for (int i = 0; i < left.strands().size(); i++) {
            hardest.merge(left.strands().get(i).label(), tensions[i], Math::max);
        }
        List<PeakForces.InStrand> inStrands = hardest.entrySet().stream()
                .map(strand -> new PeakForces.InStrand(strand.getKey(), Force.kilonewtons(strand.getValue())))
                .toList();
        return new PeakForces(onPoints, inStrands, Force.kilonewtons(peaks.held()), peaks.rising());
    }
}
