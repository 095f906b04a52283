package thalweg.rig;

import java.util.List;

/**
 * A tension-only elastic strand that is tied at its two ends and slides freely through the nodes between them. A
 * closed one slides through all of its nodes.
 *
 * <p>The tension of one strand is {@code EA max(0, l / L0 - 1)}, with l the length of its path.
 *
 * @param label such as "A leg"
 * @param path nodes in order, at least 2; a node may come again
 * @param closed whether it goes on from the last node to the first
 * @param unloadedMetres L0, above 0 [m]
 * @param stiffnessKilonewtons EA, force per unit strain of one strand, above 0 [kN]
 * @param count identical parallel strands, 1 or more
 */
record Strand(
        String label,
        List<Integer> path,
        boolean closed,
        double unloadedMetres,
        double stiffnessKilonewtons,
        int count) {

    Strand {
        path = List.copyOf(path);
        if (path.size() < 2 || count < 1 || !(unloadedMetres > 0) || !(stiffnessKilonewtons > 0)) {
            throw new IllegalArgumentException("a strand has two ends or more, a length and a stiffness");
        }
    }

    /** A strand with two ends. */
    static Strand open(String label, List<Integer> path, double unloadedMetres, double stiffness, int count) {
        return new Strand(label, path, false, unloadedMetres, stiffness, count);
    }

    /** A loop. */
    static Strand closed(String label, List<Integer> path, double unloadedMetres, double stiffness, int count) {
        return new Strand(label, path, true, unloadedMetres, stiffness, count);
    }

    /** The same strand through other nodes. */
    Strand along(List<Integer> nodes) {
        return new Strand(label, nodes, closed, unloadedMetres, stiffnessKilonewtons, count);
    }

    /** The same strand, so many times as stiff, and longer by a slack [m]. */
    Strand varied(double times, double slack) {
        return new Strand(label, path, closed, unloadedMetres + slack, stiffnessKilonewtons * times, count);
    }

    /** How many straight stretches it has. */
    int stretches() {
        return closed ? path.size() : path.size() - 1;
    }

    /** The node at the end of a stretch. */
    int after(int stretch) {
        return path.get((stretch + 1) % path.size());
    }
}
