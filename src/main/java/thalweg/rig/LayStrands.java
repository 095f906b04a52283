package thalweg.rig;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Lays the strands of a rig: every kind of rig is one way of doing so. Where a sling ends before the master, its end is a
 * knot, and the rig is laid to that knot in the place of the point.
 */
final class LayStrands {

    private static final String SLIDING_LOOP = "sliding loop";
    private static final String TRIANGLE = "triangle";
    private static final String SLIDER = "slider";

    private final RigInput input;
    private final RigSetup rig;

    /** The points that are left, in the order of the input. */
    private final List<Integer> held;

    /** Where the master starts from [m]. */
    private final Vector3 from;

    /** From where the rig is laid to each point, lost ones among them [m]. */
    private final List<Vector3> ends;

    private final SlingNodes slings;

    /** The node to which the rig is laid, by the number of the point. */
    private final Map<Integer, Integer> holders = new HashMap<>();

    /** The knots, without the master. */
    private final List<Vector3> knots = new ArrayList<>();

    private LayStrands(RigInput input, List<Integer> held, Vector3 from) {
        this.input = input;
        this.rig = input.rig();
        this.held = held;
        this.from = from;
        this.ends = input.points().stream()
                .map(point -> Slung.end(point, rig.focus()))
                .toList();
        this.slings = SlingNodes.of(input);
        for (int point : held) {
            if (Slung.endsBefore(input.points().get(point))) {
                holders.put(point, slings.fixed().size() + knots.size());
                knots.add(ends.get(point));
            } else {
                holders.put(point, point);
            }
        }
    }

    /** The network of a rig, with its master at the focus. */
    static Network of(RigInput input) {
        return over(input, 0, input.rig().focus());
    }

    /**
     * What is left of a rig when a point lets go; empty where nothing holds the master any more.
     *
     * @param from where the master is at that time [m]
     */
    static Optional<Network> left(RigInput input, int point, Vector3 from) {
        return leftWithout(input, 1 << point, from);
    }

    /**
     * What is left of a rig when several points have let go.
     *
     * @param lost a bit for each point, the first point the lowest; at least one
     * @param from where the master is at that time [m]
     */
    static Optional<Network> leftWithout(RigInput input, int lost, Vector3 from) {
        boolean released =
                input.rig().sliding().map(slides -> !slides.captured()).orElse(false);
        boolean all = lost == (1 << input.points().size()) - 1;
        return all || released ? Optional.empty() : Optional.of(over(input, lost, from));
    }

    /** The strands over the points that are not lost, each as long as it was laid over all of them. */
    private static Network over(RigInput input, int lost, Vector3 from) {
        List<Integer> held = IntStream.range(0, input.points().size())
                .filter(point -> (lost >> point & 1) == 0)
                .boxed()
                .toList();
        return new LayStrands(input, held, from).network();
    }

    private Network network() {
        List<Strand> strands = new ArrayList<>(
                switch (rig.kind()) {
                    case SINGLE, FOCUSED -> legs();
                    case SLIDING -> List.of(slidingLoop());
                    case LOOP -> List.of(triangle());
                    case LIMITED -> limited();
                });
        for (int point : held) {
            if (Slung.endsBefore(input.points().get(point))) {
                strands.addAll(slings.strands(point, holder(point), 0));
            }
        }
        List<Vector3> free = new ArrayList<>(knots);
        free.add(from);
        return new Network(slings.fixed(), slings.owners(), free, strands);
    }

    /** The number of the master's node, once all knots are there. */
    private int master() {
        return slings.fixed().size() + knots.size();
    }

    private int holder(int point) {
        return holders.getOrDefault(point, point);
    }

    /** A leg for each point; a sling that reaches to the master is one. */
    private List<Strand> legs() {
        List<Strand> legs = new ArrayList<>();
        for (int point : held) {
            double slack = rig.slack().get(point).metres();
            if (Slung.isLeg(input.points().get(point))) {
                legs.addAll(slings.strands(point, master(), slack));
            } else {
                legs.add(Strand.open(
                        StrandNames.leg(input.points().get(point)),
                        List.of(holder(point), master()),
                        way(point) + slack,
                        rig.stiffness().inKilonewtons(),
                        rig.strands()));
            }
        }
        return legs;
    }

    /**
     * A leg for each point, and between their knots the slider. When one leg is gone, its knot comes up against the
     * master, and the slider is tied there.
     */
    private List<Strand> limited() {
        Limiters limiters = rig.limiters().orElseThrow();
        List<Strand> strands = new ArrayList<>();
        List<Integer> path = new ArrayList<>();
        for (int point : held) {
            double limit = limiters.fromFocus().get(point).metres();
            int knot = master();
            Vector3 toPoint = ends.get(point).minus(from);
            knots.add(from.plus(toPoint.times(limit / way(point))));
            strands.add(Strand.open(
                    StrandNames.leg(input.points().get(point)),
                    List.of(holder(point), knot),
                    way(point) - limit,
                    rig.stiffness().inKilonewtons(),
                    rig.strands()));
            path.add(knot);
        }
        path.add(1, master());
        strands.add(Strand.open(
                SLIDER, path, limiters.slider().metres(), rig.stiffness().inKilonewtons(), limiters.sliderStrands()));
        return strands;
    }

    /** From each point to the master and on to the next, so that two stretches of it pull on every point. */
    private Strand slidingLoop() {
        List<Integer> path = new ArrayList<>();
        for (int point : held) {
            path.add(holder(point));
            path.add(master());
        }
        double unloaded =
                2 * IntStream.range(0, ends.size()).mapToDouble(this::way).sum();
        return Strand.closed(SLIDING_LOOP, path, unloaded, rig.stiffness().inKilonewtons(), rig.strands());
    }

    /** Through the points and the master, so that one stretch draws each point to the master and one to the other. */
    private Strand triangle() {
        List<Integer> path = new ArrayList<>();
        held.forEach(point -> path.add(holder(point)));
        path.add(master());
        double around = IntStream.range(0, ends.size()).mapToDouble(this::way).sum()
                + ends.get(0).distance(ends.get(1));
        return Strand.closed(TRIANGLE, path, around, rig.stiffness().inKilonewtons(), rig.strands());
    }

    private double way(int point) {
        return rig.focus().distance(ends.get(point));
    }
}
