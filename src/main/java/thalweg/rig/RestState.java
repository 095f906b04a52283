package thalweg.rig;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import thalweg.units.Angle;
import thalweg.units.Force;

/** Brings a rig to rest under one direction of its load after the other, each from where the last one ended. */
final class RestState {

    private final RigInput input;
    private Network network;

    RestState(RigInput input) {
        this(input, LayStrands.of(input));
    }

    /**
     * @param network as the rig is laid, or what is left of it
     */
    RestState(RigInput input, Network network) {
        this.input = input;
        this.network = network;
    }

    /** The rig at rest under a load in that direction. */
    RigState under(Angle direction) {
        Vector3 load =
                input.load().direction(direction).times(input.load().weight().inKilonewtons());
        Equilibrium rest = FindRest.of(network, load);
        network = rest.network();
        return new RigState(direction, rest.master(), forces(rest), pulls(rest), knots(rest), angle(rest));
    }

    private List<PointForce> forces(Equilibrium rest) {
        List<Vector3> pulls =
                IntStream.range(0, input.points().size()).mapToObj(rest::pullOn).toList();
        double sum = pulls.stream().mapToDouble(Vector3::length).sum();
        return IntStream.range(0, pulls.size())
                .mapToObj(i -> new PointForce(
                        input.points().get(i).name(), pulls.get(i), pulls.get(i).length() / sum))
                .toList();
    }

    private boolean loaded(Equilibrium rest, int strand) {
        double carried = rest.tension(strand) * network.strands().get(strand).count();
        return carried >= Analyze.LOADED * input.load().weight().inKilonewtons();
    }

    private List<StrandPull> pulls(Equilibrium rest) {
        List<StrandPull> pulls = new ArrayList<>();
        for (int i = 0; i < network.strands().size(); i++) {
            Strand strand = network.strands().get(i);
            pulls.add(new StrandPull(
                    strand.label(),
                    strand.path().stream().map(rest::place).toList(),
                    strand.closed(),
                    strand.count(),
                    Force.kilonewtons(rest.tension(i)),
                    loaded(rest, i)));
        }
        return pulls;
    }

    /** The knots at which legs end that do not reach to the master. */
    private List<KnotPlace> knots(Equilibrium rest) {
        List<KnotPlace> knots = new ArrayList<>();
        for (Strand strand : network.strands()) {
            int point = strand.path().get(0);
            int end = strand.path().get(strand.path().size() - 1);
            boolean leg = point < network.fixed().size() && !strand.closed();
            if (leg && end >= network.fixed().size() && end != network.master()) {
                boolean met = rest.together(end, network.master());
                knots.add(new KnotPlace(input.points().get(point).name(), rest.place(end), met));
            }
        }
        return knots;
    }

    private Optional<Angle> angle(Equilibrium rest) {
        List<Vector3> directions = IntStream.range(0, network.strands().size())
                .filter(i -> loaded(rest, i))
                .mapToObj(i ->
                        rest.directionsFrom(network.master(), network.strands().get(i)))
                .flatMap(List::stream)
                .toList();
        return IntStream.range(0, directions.size())
                .mapToObj(i ->
                        IntStream.range(0, i).mapToObj(j -> directions.get(i).degreesTo(directions.get(j))))
                .flatMap(angles -> angles)
                .max(Comparator.naturalOrder())
                .map(Angle::new);
    }
}
