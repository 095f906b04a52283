package thalweg.rig;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** Lays the strands of a rig: every kind of rig is one way of doing so. */
final class LayStrands {

    private static final String SLIDING_LOOP = "sliding loop";
    private static final String TRIANGLE = "triangle";

    private final RigInput input;
    private final RigSetup rig;
    private final List<Vector3> points;

    /** The number of the master's node. */
    private final int master;

    private LayStrands(RigInput input) {
        this.input = input;
        this.rig = input.rig();
        this.points = input.points().stream().map(RigPoint::at).toList();
        this.master = points.size();
    }

    /** The network of a rig, with its master at the focus. */
    static Network of(RigInput input) {
        LayStrands lay = new LayStrands(input);
        List<Integer> all = IntStream.range(0, lay.master).boxed().toList();
        return new Network(lay.points, List.of(input.rig().focus()), lay.over(all));
    }

    /** What is left of the strands when a point lets go; empty where nothing holds the master any more. */
    static Optional<List<Strand>> without(RigInput input, int point) {
        LayStrands lay = new LayStrands(input);
        List<Integer> left =
                IntStream.range(0, lay.master).filter(i -> i != point).boxed().toList();
        boolean released =
                input.rig().sliding().map(slides -> !slides.captured()).orElse(false);
        return left.isEmpty() || released ? Optional.empty() : Optional.of(lay.over(left));
    }

    /** The strands over those points, each as long as it was laid over all of them. */
    private List<Strand> over(List<Integer> held) {
        return switch (rig.kind()) {
            case SINGLE, FOCUSED -> held.stream().map(this::leg).toList();
            case SLIDING -> List.of(slidingLoop(held));
            case LOOP -> List.of(triangle(held));
            case LIMITED -> throw new AssertionError("a draft of that kind is refused");
        };
    }

    private Strand leg(int point) {
        return Strand.open(
                input.points().get(point).name() + " leg",
                List.of(point, master),
                way(point) + rig.slack().get(point).metres(),
                rig.stiffness().inKilonewtons(),
                rig.strands());
    }

    /** From each point to the master and on to the next, so that two stretches of it pull on every point. */
    private Strand slidingLoop(List<Integer> held) {
        List<Integer> path = new ArrayList<>();
        for (int point : held) {
            path.add(point);
            path.add(master);
        }
        double unloaded = 2 * IntStream.range(0, master).mapToDouble(this::way).sum();
        return Strand.closed(SLIDING_LOOP, path, unloaded, rig.stiffness().inKilonewtons(), rig.strands());
    }

    /** Through the points and the master, so that one stretch draws each point to the master and one to the other. */
    private Strand triangle(List<Integer> held) {
        List<Integer> path = new ArrayList<>(held);
        path.add(master);
        double around = IntStream.range(0, master).mapToDouble(this::way).sum()
                + points.get(0).distance(points.get(1));
        return Strand.closed(TRIANGLE, path, around, rig.stiffness().inKilonewtons(), rig.strands());
    }

    private double way(int point) {
        return rig.focus().distance(points.get(point));
    }
}
