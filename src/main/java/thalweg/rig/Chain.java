package thalweg.rig;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Strands that are tied end to end, or one strand alone.
 *
 * @param parts in the order of its path, at least 1
 */
record Chain(List<Part> parts) {

    Chain {
        parts = List.copyOf(parts);
    }

    /**
     * One strand of it.
     *
     * @param strand as it was laid
     * @param number of that strand in its network
     * @param backwards whether the chain runs through it from its last node to its first
     */
    record Part(Strand strand, int number, boolean backwards) {

        List<Integer> path() {
            List<Integer> path = new ArrayList<>(strand.path());
            if (backwards) {
                Collections.reverse(path);
            }
            return path;
        }

        /** By how much it is longer than unloaded for each kilonewton that it bears [m/kN]. */
        private double give() {
            return strand.unloadedMetres() / (strand.count() * strand.stiffnessKilonewtons());
        }

        /** How long it is where its parallel strands bear that much together [kN]. */
        double lengthUnder(double force) {
            return strand.unloadedMetres() + force * give();
        }
    }

    /** A strand alone. */
    static Chain of(Strand strand, int number) {
        return new Chain(List.of(new Part(strand, number, false)));
    }

    /** All nodes that it passes, its knots among them. */
    List<Integer> path() {
        List<Integer> path = new ArrayList<>();
        for (Part part : parts) {
            List<Integer> next = part.path();
            path.addAll(path.isEmpty() ? next : next.subList(1, next.size()));
        }
        return path;
    }

    /** Whether it is tied to a node with one of its ends, and does not come to it otherwise. */
    boolean endsAt(int node) {
        List<Integer> path = path();
        boolean open = !parts.get(0).strand().closed();
        boolean end = path.get(0) == node || path.get(path.size() - 1) == node;
        return open && end && Collections.frequency(path, node) == 1;
    }

    /** This chain and another that is tied to it by a knot. */
    Chain tiedTo(Chain other, int knot) {
        List<Part> both = new ArrayList<>(path().get(0) == knot ? reversed() : parts);
        both.addAll(other.path().get(0) == knot ? other.parts : other.reversed());
        return new Chain(both);
    }

    private List<Part> reversed() {
        List<Part> turned = new ArrayList<>();
        for (Part part : parts) {
            turned.add(0, new Part(part.strand(), part.number(), !part.backwards()));
        }
        return turned;
    }

    /**
     * The strand that gives way as the whole chain does.
     *
     * @param path through the nodes that are left of its own
     */
    Strand asOne(List<Integer> path) {
        Strand first = parts.get(0).strand();
        if (parts.size() == 1) {
            return new Strand(
                    first.label(),
                    path,
                    first.closed(),
                    first.unloadedMetres(),
                    first.stiffnessKilonewtons(),
                    first.count());
        }
        String label = parts.stream().map(part -> part.strand().label()).collect(Collectors.joining(" and "));
        double unloaded = parts.stream()
                .mapToDouble(part -> part.strand().unloadedMetres())
                .sum();
        double give = parts.stream().mapToDouble(Part::give).sum();
        return Strand.open(label, path, unloaded, unloaded / give, 1);
    }
}
