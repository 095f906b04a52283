package thalweg.rig;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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

    /** The cut of each strand, in the order in which they are laid. */
    static List<StrandCut> cuts(RigInput input, List<PointLoss> losses) {
        List<StrandCut> cuts = new ArrayList<>();
        List<Strand> strands = LayStrands.of(input).strands();
        for (int i = 0; i < strands.size(); i++) {
            boolean leg = i < losses.size() && input.rig().kind().hasLegs();
            cuts.add(leg ? asLoss(strands.get(i), losses.get(i)) : alone(strands.get(i)));
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
        List<PeakForces.OnPoint> onPoints = IntStream.range(0, left.fixed().size())
                .filter(point ->
                        left.strands().stream().anyMatch(strand -> strand.path().contains(point)))
                .mapToObj(point -> new PeakForces.OnPoint(
                        input.points().get(point).name(),
                        Force.kilonewtons(peaks.points()[point]),
                        Force.kilonewtons(peaks.counted()[point])))
                .toList();
        List<PeakForces.InStrand> inStrands = IntStream.range(0, left.strands().size())
                .mapToObj(i -> new PeakForces.InStrand(left.strands().get(i).label(), Force.kilonewtons(tensions[i])))
                .toList();
        return new PeakForces(onPoints, inStrands, Force.kilonewtons(peaks.held()), peaks.rising());
    }
}
