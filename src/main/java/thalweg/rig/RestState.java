package thalweg.rig;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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
        List<Vector3> pulls = new ArrayList<>();
        for (int i = 0; i < input.points().size(); i++) {
            pulls.add(rest.pullOnPoint(i));
        }
        double sum = pulls.stream().mapToDouble(Vector3::length).sum();
        List<PointForce> forces = new ArrayList<>();
        for (int i = 0; i < pulls.size(); i++) {
            Vector3 pull = pulls.get(i);
            forces.add(new PointForce(input.points().get(i).name(), pull, pull.length() / sum));
        }
        return forces;
    }

    private boolean loaded(Equilibrium rest, int strand) {
        double carried = rest.tension(strand) * network.strands().get(strand).count();
        return carried >= Analyze.LOADED * input.load().weight().inKilonewtons();
    }

    private List<StrandPull> pulls(Equilibrium rest) {
        List<StrandPull> pulls = new ArrayList<>();
        for (int i = 0; i < network.strands().size(); i++) {
            Strand strand = network.strands().get(i);
            List<Vector3> path = new ArrayList<>();
            strand.path().forEach(node -> path.add(rest.place(node)));
            pulls.add(new StrandPull(
                    strand.label(),
                    path,
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
            int end = strand.path().get(strand.path().size() - 1);
            if (end != network.master()) {
                StrandNames.leggedPoint(input, strand.label()).ifPresent(point -> {
                    boolean met = rest.together(end, network.master());
                    knots.add(new KnotPlace(input.points().get(point).name(), rest.place(end), met));
                });
            }
        }
        return knots;
    }

    private Optional<Angle> angle(Equilibrium rest) {
        List<Vector3> directions = new ArrayList<>();
        for (int i = 0; i < network.strands().size(); i++) {
            if (loaded(rest, i)) {
                directions.addAll(
                        rest.directionsFrom(network.master(), network.strands().get(i)));
            }
        }
        if (directions.size() < 2) {
            return Optional.empty();
        }
        double widest = 0;
        for (int i = 0; i < directions.size(); i++) {
            for (int j = 0; j < i; j++) {
                widest = Math.max(widest, directions.get(i).degreesTo(directions.get(j)));
            }
        }
        return Optional.of(new Angle(widest));
    }
}
