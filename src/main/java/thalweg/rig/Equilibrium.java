package thalweg.rig;

import java.util.ArrayList;
import java.util.List;

/**
 * A network at rest under its load.
 *
 * @param network whose free nodes stand where they came to rest
 * @param lengths of the strands' paths, in their order [m]
 * @param residual the largest force in any coordinate that is not balanced [kN]
 * @param steps that were taken to find it
 */
record Equilibrium(Network network, List<Double> lengths, double residual, int steps) {

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

    /** The sum of the tensions that reach a node [kN]. */
    Vector3 pullOn(int node) {
        Vector3 sum = Vector3.ZERO;
        for (int i = 0; i < network.strands().size(); i++) {
            double tension = network.strands().get(i).count() * tension(i);
            if (tension > 0) {
                for (Vector3 away : directionsFrom(node, network.strands().get(i))) {
                    sum = sum.plus(away.times(tension));
                }
            }
        }
        return sum;
    }

    /**
     * The directions in which a strand leaves a node, as unit vectors; none where it does not pass there. A stretch
     * whose ends lie in one place has no direction and is left out.
     */
    List<Vector3> directionsFrom(int node, Strand strand) {
        List<Vector3> directions = new ArrayList<>();
        for (int j = 0; j < strand.stretches(); j++) {
            int from = strand.path().get(j);
            int to = strand.after(j);
            Vector3 along = place(to).minus(place(from));
            double length = along.length();
            if (length > 0 && from == node) {
                directions.add(along.times(1 / length));
            }
            if (length > 0 && to == node) {
                directions.add(along.times(-1 / length));
            }
        }
        return directions;
    }
}
