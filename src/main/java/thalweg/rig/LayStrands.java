package thalweg.rig;

import java.util.ArrayList;
import java.util.List;
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
        List<Strand> strands = switch (input.rig().kind()) {
            case SINGLE, FOCUSED -> lay.legs();
            case SLIDING -> List.of(lay.slidingLoop());
            case LOOP -> List.of(lay.triangle());
            case LIMITED -> throw new AssertionError("a draft of that kind is refused");
        };
        return new Network(lay.points, List.of(input.rig().focus()), strands);
    }

    private List<Strand> legs() {
        List<Strand> legs = new ArrayList<>();
        for (int i = 0; i < points.size(); i++) {
            double unloaded = way(i) + rig.slack().get(i).metres();
            legs.add(Strand.open(
                    input.points().get(i).name() + " leg",
                    List.of(i, master),
                    unloaded,
                    rig.stiffness().inKilonewtons(),
                    rig.strands()));
        }
        return legs;
    }

    /** From each point to the master and on to the next, so that two stretches of it pull on every point. */
    private Strand slidingLoop() {
        List<Integer> path = new ArrayList<>();
        double unloaded = 0;
        for (int i = 0; i < points.size(); i++) {
            path.add(i);
            path.add(master);
            unloaded += 2 * way(i);
        }
        return Strand.closed(SLIDING_LOOP, path, unloaded, rig.stiffness().inKilonewtons(), rig.strands());
    }

    /** One stretch to each point and one between the points. */
    private Strand triangle() {
        double around = IntStream.range(0, points.size()).mapToDouble(this::way).sum()
                + points.get(0).distance(points.get(1));
        return Strand.closed(
                TRIANGLE, List.of(0, master, 1), around, rig.stiffness().inKilonewtons(), rig.strands());
    }

    private double way(int point) {
        return rig.focus().distance(points.get(point));
    }
}
