package thalweg.rig;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Strands between nodes: fixed nodes first, then free knots, the last of which is the master.
 *
 * <p>The first fixed nodes are the points, one each. A point that is wide has a second node among those after them; the
 * force on it is the sum over both.
 *
 * @param fixed places of the points and of the second nodes of some [m], at least 1; nodes 0 to n - 1
 * @param owners for each fixed node the number of its point; those of the points are their own
 * @param free places from which the free nodes start [m]; nodes n and up, the last is the master, unless it is held
 * @param strands any, but an energy needs one to hold the master
 */
record Network(List<Vector3> fixed, List<Integer> owners, List<Vector3> free, List<Strand> strands) {

    Network {
        fixed = List.copyOf(fixed);
        owners = List.copyOf(owners);
        free = List.copyOf(free);
        strands = List.copyOf(strands);
        if (fixed.isEmpty() || owners.size() != fixed.size()) {
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

    /** A network whose points have one node each. */
    Network(List<Vector3> fixed, List<Vector3> free, List<Strand> strands) {
        this(fixed, IntStream.range(0, fixed.size()).boxed().toList(), free, strands);
    }

    /** The number of the node that carries the load. */
    int master() {
        return fixed.size() + free.size() - 1;
    }

    /** The nodes of a point, its own first. */
    int[] nodesOf(int point) {
        return IntStream.range(0, fixed.size())
                .filter(node -> owners.get(node) == point)
                .toArray();
    }

    /** The same network whose free nodes start elsewhere. */
    Network startingAt(List<Vector3> places) {
        return new Network(fixed, owners, places, strands);
    }

    /** The same network whose master is held where it starts: it becomes the last fixed node, and bears no point's name. */
    Network withMasterHeld() {
        int held = fixed.size();
        List<Vector3> fixedNow = new ArrayList<>(fixed);
        fixedNow.add(free.get(free.size() - 1));
        List<Integer> ownersNow = new ArrayList<>(owners);
        ownersNow.add(held);
        List<Strand> renumbered = strands.stream()
                .map(strand -> strand.along(strand.path().stream()
                        .map(node -> node < held ? node : node == master() ? held : node + 1)
                        .toList()))
                .toList();
        return new Network(fixedNow, ownersNow, free.subList(0, free.size() - 1), renumbered);
    }

    /** The same nodes with other strands between them. */
    Network with(List<Strand> others) {
        return new Network(fixed, owners, free, others);
    }
}
