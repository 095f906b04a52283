package thalweg.rig;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** What is left of the strands of a rig when several of its points have let go. */
final class Remains {

    private Remains() {}

    /**
     * The network that is left; empty where nothing holds the master any more.
     *
     * @param lost a bit for each point, the first point the lowest
     * @param master where the master starts from [m]
     */
    static Optional<Network> of(RigInput input, int lost, Vector3 master) {
        List<Integer> gone = IntStream.range(0, input.points().size())
                .filter(point -> (lost >> point & 1) != 0)
                .boxed()
                .toList();
        if (gone.isEmpty()) {
            return Optional.of(LayStrands.of(input));
        }
        List<Vector3> points = input.points().stream().map(RigPoint::at).toList();
        return LayStrands.without(input, gone.get(0))
                .map(first -> without(first, gone.subList(1, gone.size())))
                .filter(strands -> !strands.isEmpty() && gone.size() < points.size())
                .map(strands -> new Network(points, List.of(master), strands));
    }

    private static List<Strand> without(List<Strand> strands, List<Integer> points) {
        List<Strand> left = strands;
        for (int point : points) {
            left = left.stream()
                    .flatMap(strand -> without(strand, point).stream())
                    .toList();
        }
        return left;
    }

    /** A leg goes with its point; a loop drops off it and keeps its length. */
    private static Optional<Strand> without(Strand strand, int point) {
        if (!strand.path().contains(point)) {
            return Optional.of(strand);
        }
        if (!strand.closed()) {
            return Optional.empty();
        }
        List<Integer> path = new ArrayList<>();
        for (int node : strand.path()) {
            boolean again = !path.isEmpty() && path.get(path.size() - 1) == node;
            if (node != point && !again) {
                path.add(node);
            }
        }
        boolean around = path.size() > 1 && path.get(0).equals(path.get(path.size() - 1));
        List<Integer> once = around ? path.subList(0, path.size() - 1) : path;
        return once.size() < 2
                ? Optional.empty()
                : Optional.of(Strand.closed(
                        strand.label(), once, strand.unloadedMetres(), strand.stiffnessKilonewtons(), strand.count()));
    }
}
