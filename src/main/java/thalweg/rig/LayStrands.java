package thalweg.rig;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** Lays the strands of a rig: every kind of rig is one way of doing so. */
final class LayStrands {

    private static final String SLIDING_LOOP = "sliding loop";
    private static final String TRIANGLE = "triangle";
    private static final String SLIDER = "slider";

    private final RigInput input;
    private final RigSetup rig;
    private final List<Vector3> points;

    /** The number of the master's node, where there are no knots. */
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
        return lay.over(all, input.rig().focus());
    }

    /**
     * What is left of a rig when a point lets go; empty where nothing holds the master any more.
     *
     * @param from where the master is at that time [m]
     */
    static Optional<Network> left(RigInput input, int point, Vector3 from) {
        LayStrands lay = new LayStrands(input);
        List<Integer> left =
                IntStream.range(0, lay.master).filter(i -> i != point).boxed().toList();
        boolean released =
                input.rig().sliding().map(slides -> !slides.captured()).orElse(false);
        return left.isEmpty() || released ? Optional.empty() : Optional.of(lay.over(left, from));
    }

    /** The strands that are left, with those that a knot ties end to end as one, so that no node but the master is free. */
    static Optional<List<Strand>> without(RigInput input, int point) {
        return left(input, point, input.rig().focus())
                .map(left -> Splice.of(left).network().strands());
    }

    /** The strands over those points, each as long as it was laid over all of them. */
    private Network over(List<Integer> held, Vector3 from) {
        return switch (rig.kind()) {
            case SINGLE, FOCUSED -> tied(from, held.stream().map(this::leg).toList());
            case SLIDING -> tied(from, List.of(slidingLoop(held)));
            case LOOP -> tied(from, List.of(triangle(held)));
            case LIMITED -> limited(held, from);
        };
    }

    private Network tied(Vector3 from, List<Strand> strands) {
        return new Network(points, List.of(from), strands);
    }

    /**
     * A leg for each point, and between their knots the slider. When one leg is gone, its knot comes up against the
     * master, and the slider is tied there.
     */
    private Network limited(List<Integer> held, Vector3 from) {
        Limiters limiters = rig.limiters().orElseThrow();
        int last = points.size() + held.size();
        List<Vector3> free = new ArrayList<>();
        List<Strand> strands = new ArrayList<>();
        List<Integer> path = new ArrayList<>();
        for (int i = 0; i < held.size(); i++) {
            int point = held.get(i);
            double limit = limiters.fromFocus().get(point).metres();
            int knot = points.size() + i;
            Vector3 toPoint = points.get(point).minus(from);
            free.add(from.plus(toPoint.times(limit / way(point))));
            strands.add(Strand.open(
                    name(point),
                    List.of(point, knot),
                    way(point) - limit,
                    rig.stiffness().inKilonewtons(),
                    rig.strands()));
            path.add(knot);
        }
        path.add(1, last);
        free.add(from);
        strands.add(Strand.open(
                SLIDER, path, limiters.slider().metres(), rig.stiffness().inKilonewtons(), limiters.sliderStrands()));
        return new Network(points, free, strands);
    }

    private String name(int point) {
        return input.points().get(point).name() + " leg";
    }

    private Strand leg(int point) {
        return Strand.open(
                name(point),
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
