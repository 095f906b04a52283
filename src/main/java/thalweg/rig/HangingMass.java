package thalweg.rig;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.hipparchus.exception.LocalizedCoreFormats;
import org.hipparchus.exception.MathIllegalStateException;

/**
 * The mass of a load in its uniform field of force, and how a network pulls at it wherever it is.
 *
 * <p>The mass is the master itself, or hangs below it on a rope that only pulls. Every other node is massless and in
 * equilibrium at every instant: it stands where the strands store least. While nothing is taut, that is in many places,
 * but their pulls are 0 in all of them.
 */
final class HangingMass {

    /** A tension on the way up or down at which a strand counts as becoming taut or slack, in parts of the load. */
    private static final double JUST_TAUT = 1e-4;

    /** Stretches of length 0 are rounded off by this part of the longest strand. */
    private static final double ROUNDING = 1e-9;

    /** Points, then the mass. */
    private final List<Vector3> fixed;

    /** For each point the nodes that belong to it. */
    private final int[][] nodes;

    private final List<Strand> strands;
    private final Vector3 weight;
    private final int mass;
    private final boolean roped;

    private final Energy energy;
    private final Optional<FindEquilibrium> massless;
    private final double[] pulls;
    private final double[] place = new double[3];

    /**
     * A mass at rest.
     *
     * @param network that holds it, its free nodes where they are to start from
     * @param load that hangs there
     * @param direction of the load, a unit vector
     */
    HangingMass(Network network, RigLoad load, Vector3 direction) {
        int points = network.fixed().size();
        double weighs = load.weight().inKilonewtons();
        double out = load.ropeOut().metres();
        Vector3 master = network.free().get(network.free().size() - 1);
        List<Vector3> free = new ArrayList<>(network.free());
        this.mass = points;
        this.nodes = new int[points][];
        Arrays.setAll(nodes, network::nodesOf);
        this.roped = out > 0;
        this.weight = direction.times(weighs);
        this.strands = new ArrayList<>();
        if (out == 0) {
            free.remove(free.size() - 1);
        }
        int lastFree = points + free.size();
        network.strands().forEach(strand -> strands.add(renumbered(strand, points, lastFree)));
        Vector3 start = master;
        if (out > 0) {
            double stiffness = load.ropeStiffness().orElseThrow().inKilonewtons();
            start = master.plus(direction.times(out * (1 + weighs / stiffness)));
            strands.add(Strand.open("rope", List.of(lastFree, mass), out, stiffness, 1));
        }
        this.fixed = new ArrayList<>(network.fixed());
        fixed.add(start);
        this.energy = new Energy(fixed, free.size(), strands, Vector3.ZERO);
        energy.roundOff(ROUNDING
                * strands.stream().mapToDouble(Strand::unloadedMetres).max().orElseThrow());
        this.massless = free.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        new FindEquilibrium(new Network(fixed, free, strands), energy, weighs, FindEquilibrium.FAIR));
        this.pulls = new double[3 * fixed.size()];
        place[0] = Double.NaN;
        moveTo(start.x(), start.y(), start.z());
    }

    /** The strand where the mass has the number after the points; a master beyond the last free node is the mass. */
    private static Strand renumbered(Strand strand, int points, int lastFree) {
        List<Integer> path = strand.path().stream()
                .map(node -> node < points ? node : node + 1 > lastFree ? points : node + 1)
                .toList();
        return strand.along(path);
    }

    /** Where it hangs at rest [m]. */
    Vector3 start() {
        return fixed.get(mass);
    }

    /**
     * Puts the mass elsewhere [m]; everything massless follows.
     *
     * @throws MathIllegalStateException when no equilibrium was found for what is massless
     */
    void moveTo(double x, double y, double z) {
        if (place[0] == x && place[1] == y && place[2] == z) {
            return;
        }
        energy.moveFixed(mass, x, y, z);
        if (massless.isPresent()) {
            double residual = massless.get().run();
            if (!massless.get().bearable(residual)) {
                throw new MathIllegalStateException(LocalizedCoreFormats.CONVERGENCE_FAILED);
            }
        }
        energy.pullsOnFixed(free(), pulls);
        place[0] = x;
        place[1] = y;
        place[2] = z;
    }

    private double[] free() {
        return massless.map(FindEquilibrium::places).orElse(new double[0]);
    }

    /**
     * The force on the mass, its weight included, along one of the three axes [kN].
     *
     * @param axis 0 to 2
     */
    double force(int axis) {
        double along = axis == 0 ? weight.x() : axis == 1 ? weight.y() : weight.z();
        return pulls[3 * mass + axis] + along;
    }

    /** How hard a point is pulled [kN]. */
    double pullOn(int point) {
        return pull(point).length();
    }

    /** The pull on a point, over all of its nodes [kN]. */
    Vector3 pull(int point) {
        Vector3 sum = pullAt(nodes[point][0]);
        for (int i = 1; i < nodes[point].length; i++) {
            sum = sum.plus(pullAt(nodes[point][i]));
        }
        return sum;
    }

    /** The pull on a fixed node, or on the mass by what holds it [kN]. */
    private Vector3 pullAt(int node) {
        return new Vector3(pulls[3 * node], pulls[3 * node + 1], pulls[3 * node + 2]);
    }

    /** How hard the mass is held: by the strands at the master, or by the rope below it, which is as much [kN]. */
    double held() {
        return pullAt(mass).length();
    }

    /** The tension in one of the parallel strands [kN], 0 or more. */
    double tension(int strand) {
        Strand one = strands.get(strand);
        return one.stiffnessKilonewtons() * Math.max(0, energy.excess(strand, free())) / one.unloadedMetres();
    }

    /** How many strands there are; the rope, where there is one, is the last of them. */
    int strands() {
        return strands.size();
    }

    /**
     * A number that changes its sign where a strand becomes taut or slack, above 0 where it is taut.
     *
     * <p>How long a slack strand is can be told where nothing is massless. Else it cannot, and the strand
     * counts as taut from a small tension on. That tension is another one for each, since strands in a row become taut at
     * one time and two such numbers with their zero in one place cannot be told apart.
     */
    double tautness(int strand) {
        return massless.isPresent()
                ? tension(strand) - (strand + 1) * JUST_TAUT * weight.length()
                : energy.excess(strand, free());
    }

    /** What the strands store, less what the weight has given since the place at rest [kJ]. */
    double potential() {
        Vector3 fallen = new Vector3(place[0], place[1], place[2]).minus(start());
        return energy.stored(free()) - weight.dot(fallen);
    }

    /**
     * A spring that is as stiff as any that the mass can feel [kN/m]: the rope, or the strands where it hangs on them
     * directly. Where strands in a row hold it, both those at the mass and those at the points are too stiff.
     */
    double stiffest() {
        if (roped) {
            Strand last = strands.get(strands.size() - 1);
            return last.stiffnessKilonewtons() / last.unloadedMetres();
        }
        return massless.isEmpty()
                ? springs(strand -> true)
                : Math.min(
                        springs(strand -> strand.path().contains(mass)),
                        springs(strand -> strand.path().stream().anyMatch(node -> node < mass)));
    }

    private double springs(Predicate<Strand> which) {
        return strands.stream()
                .filter(which)
                .mapToDouble(strand -> strand.stretches()
                        * strand.stretches()
                        * strand.count()
                        * strand.stiffnessKilonewtons()
                        / strand.unloadedMetres())
                .sum();
    }

    @Override
    public String toString() {
        return "mass at " + Arrays.toString(place) + " on " + strands;
    }
}
