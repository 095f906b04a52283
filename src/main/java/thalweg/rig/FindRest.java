package thalweg.rig;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * Finds where a network comes to rest whose master may slide against a knot.
 *
 * <p>Where it rests against none, it does as if they were not there. Where it rests against one, the energy has a kink, at
 * which {@link FindEquilibrium} would grope about. So the knot is merged with the master, which leaves a smooth energy, and
 * that state is the one at rest if the strand along which the master slides holds the knot there: it pulls with its
 * tension, and nothing else at the knot may pull harder. Since the energy is convex, only one of these states holds, or
 * several that are the same.
 */
final class FindRest {

    private FindRest() {}

    /**
     * The state of rest.
     *
     * @param network whose knots tie strands end to end or are ends of slings, and whose free nodes start anywhere
     * @param load on the master, not of length 0 [kN]
     */
    static Equilibrium of(Network network, Vector3 load) {
        return of(network, Pull.of(load));
    }

    /** The state of rest under a pull that may be directed to a place. */
    static Equilibrium of(Network network, Pull load) {
        if (network.free().size() == 1) {
            return FindEquilibrium.of(network, load);
        }
        Splice off = Splice.of(network);
        Equilibrium free = off.restored(FindEquilibrium.of(off.network(), load));
        Set<Integer> knots = besideTheMaster(network);
        if (knots.isEmpty() || isBetweenTheKnots(free)) {
            return free;
        }
        for (int knot : knots) {
            Equilibrium against = against(network, knot, load);
            if (stays(against, knot)) {
                return against;
            }
        }
        return free;
    }

    /**
     * Whether the master lies on every strand along which it slides, and not beyond the knots at its ends: then the knots
     * hold nothing back, and what is at rest without them is at rest with them. A master beyond a knot would make the way
     * to it and back longer than the strand is.
     */
    private static boolean isBetweenTheKnots(Equilibrium rest) {
        Network network = rest.network();
        for (int i = 0; i < network.strands().size(); i++) {
            Strand strand = network.strands().get(i);
            if (!strand.closed()
                    && strand.path().subList(1, strand.path().size() - 1).contains(network.master())) {
                double way = 0;
                for (int j = 0; j + 1 < strand.path().size(); j++) {
                    way += rest.place(strand.path().get(j))
                            .distance(rest.place(strand.path().get(j + 1)));
                }
                if (way > rest.lengths().get(i) + rest.rounding()) {
                    return false;
                }
            }
        }
        return true;
    }

    /**
     * The knots against which the master may come to rest: those next to it at the ends of a strand along which it slides.
     * A closed strand ends nowhere and slides through the ends of slings.
     */
    private static Set<Integer> besideTheMaster(Network network) {
        Set<Integer> knots = new TreeSet<>();
        for (Strand strand : network.strands()) {
            List<Integer> path = strand.path();
            for (int i = 1; i + 1 < path.size() && !strand.closed(); i++) {
                if (path.get(i) == network.master()) {
                    knots.add(path.get(i - 1));
                    knots.add(path.get(i + 1));
                }
            }
        }
        knots.removeIf(node -> node < network.fixed().size() || node == network.master());
        return knots;
    }

    private static Equilibrium against(Network network, int knot, Pull load) {
        Splice merged = Splice.of(merged(network, knot));
        Equilibrium rest = merged.restored(FindEquilibrium.of(merged.network(), load));
        List<Vector3> free = new ArrayList<>(rest.network().free());
        free.add(knot - network.fixed().size(), rest.master());
        return new Equilibrium(
                network.startingAt(free), rest.lengths(), rest.rounding(), rest.residual(), rest.steps());
    }

    /** The same network with the knot and the master as one node. */
    private static Network merged(Network network, int knot) {
        List<Vector3> free = new ArrayList<>(network.free());
        free.remove(knot - network.fixed().size());
        List<Strand> strands = network.strands().stream()
                .map(strand -> merged(strand, knot, network.master()))
                .toList();
        return new Network(network.fixed(), network.owners(), free, strands);
    }

    private static Strand merged(Strand strand, int knot, int master) {
        List<Integer> path = new ArrayList<>();
        for (int node : strand.path()) {
            int now = node == knot ? master - 1 : node > knot ? node - 1 : node;
            if (path.isEmpty() || path.get(path.size() - 1) != now) {
                path.add(now);
            }
        }
        return strand.along(path);
    }

    /** Whether the strand on which the master slides pulls the knot to it at least as hard as all else pulls it away. */
    private static boolean stays(Equilibrium against, int knot) {
        Network network = against.network();
        double held = 0;
        double pulled = 0;
        for (int i = 0; i < network.strands().size(); i++) {
            Strand strand = network.strands().get(i);
            if (strand.path().contains(knot)) {
                double force = strand.count() * against.tension(i);
                if (strand.path().contains(network.master())) {
                    held += force;
                } else {
                    pulled += force;
                }
            }
        }
        return pulled <= held;
    }
}
