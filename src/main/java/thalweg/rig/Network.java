package thalweg.rig;

import java.util.List;

/**
 * Strands between nodes: fixed points first, then free knots, the last of which is the master.
 *
 * @param fixed places of the points [m], at least 1; nodes 0 to n - 1
 * @param free places from which the free nodes start [m], at least 1; nodes n and up, the last is the master
 * @param strands at least 1
 */
record Network(List<Vector3> fixed, List<Vector3> free, List<Strand> strands) {

    Network {
        fixed = List.copyOf(fixed);
        free = List.copyOf(free);
        strands = List.copyOf(strands);
        if (fixed.isEmpty() || free.isEmpty() || strands.isEmpty()) {
            throw new IllegalArgumentException("a network ties a master to points");
        }
        int nodes = fixed.size() + free.size();
        for (Strand strand : strands) {
            for (int node : strand.path()) {
                if (node < 0 || node >= nodes) {
                    throw new IllegalArgumentException("strands pass nodes that are there");
                }
            }
        }
    }

    /** The number of the node that carries the load. */
    int master() {
        return fixed.size() + free.size() - 1;
    }

    /** The same network whose free nodes start elsewhere. */
    Network startingAt(List<Vector3> places) {
        return new Network(fixed, places, strands);
    }
}
