package thalweg.rig;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * A network at rest under its load.
 *
 * @param network whose free nodes stand where they came to rest
 * @param lengths of the strands' paths, in their order [m]
 * @param rounding by which a stretch of length 0 was rounded off [m], above 0
 * @param residual the largest force in any coordinate that is not balanced [kN]
 * @param steps that were taken to find it
 */
record Equilibrium(Network network, List<Double> lengths, double rounding, double residual, int steps) {

    /** Nodes nearer than this many times the rounding have run into one another. */
    private static final double MET = 1000;

    Equilibrium {
        lengths = List.copyOf(lengths);
    }

    /** Where the master came to rest [m]. */
    Vector3 master() {
        return network.free().get(network.free().size() - 1);
    }

    /** The place of a node [m]. */
    Vector3 place(int node) {
        int fixed = network.fixed().size();
        return node < fixed ? network.fixed().get(node) : network.free().get(node - fixed);
    }

    /** The tension in one of the parallel strands [kN], 0 or more. */
    double tension(int strand) {
        Strand one = network.strands().get(strand);
        return one.stiffnessKilonewtons()
                * Math.max(0, (lengths.get(strand) - one.unloadedMetres()) / one.unloadedMetres());
    }

    /**
     * The sum of the tensions that reach a node [kN].
     *
     * <p>Where another node has run into this one, the stretch between them pulls with less than its tension: as much
     * as it takes for balance.
     */
    Vector3 pullOn(int node) {
        Vector3 sum = Vector3.ZERO;
        for (int i = 0; i < network.strands().size(); i++) {
            Strand strand = network.strands().get(i);
            double tension = strand.count() * tension(i);
            for (int j = 0; j < strand.stretches() && tension > 0; j++) {
                int from = strand.path().get(j);
                int to = strand.after(j);
                Vector3 along = place(to).minus(place(from));
                double rounded = Math.hypot(along.length(), rounding);
                if (from == node) {
                    sum = sum.plus(along.times(tension / rounded));
                }
                if (to == node) {
                    sum = sum.minus(along.times(tension / rounded));
                }
            }
        }
        return sum;
    }

    /** The sum of the tensions that reach a point, at all of its nodes [kN]. */
    Vector3 pullOnPoint(int point) {
        int[] nodes = network.nodesOf(point);
        Vector3 sum = pullOn(nodes[0]);
        for (int i = 1; i < nodes.length; i++) {
            sum = sum.plus(pullOn(nodes[i]));
        }
        return sum;
    }

    /** Whether two nodes have run into one another. */
    boolean together(int one, int another) {
        return one == another || place(one).distance(place(another)) <= MET * rounding;
    }

    /**
     * The directions in which a strand leaves a node for others, as unit vectors, one for each of the other nodes; none
     * where it does not pass there.
     *
     * <p>Another free node that has run into this one counts as this one: what leaves there leaves here. A fixed node
     * that this one has run into lies in no direction and is left out.
     */
    List<Vector3> directionsFrom(int node, Strand strand) {
        Set<Integer> others = new LinkedHashSet<>();
        for (int j = 0; j < strand.stretches(); j++) {
            int from = strand.path().get(j);
            int to = strand.after(j);
            if (isFreeAt(from, node)) {
                others.add(to);
            }
            if (isFreeAt(to, node)) {
                others.add(from);
            }
        }
        List<Vector3> directions = new ArrayList<>();
        for (int other : others) {
            if (!together(node, other)) {
                Vector3 along = place(other).minus(place(node));
                directions.add(along.times(1 / along.length()));
            }
        }
        return directions;
    }

    private boolean isFreeAt(int candidate, int node) {
        return candidate == node || (candidate >= network.fixed().size() && together(candidate, node));
    }
}
