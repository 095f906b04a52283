package thalweg.rig;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoublePredicate;
import thalweg.fault.Sentence;

/**
 * Finds between which shares friction may leave the two points of a rig whose master slides between limiter knots, or on
 * a loop through the ends of slings.
 *
 * <p>As in {@link FindFriction}, the ratio of the tensions on the two sides of the master stays within {@code exp(± mu
 * beta)}. Each side is a leg, if there is one, and what the master leaves of the slider there; with a certain length of it
 * on the first side, both are tied strands, and their rest follows. The more of it there is, the less that side pulls.
 * Where the slider would slip until a knot comes up against the master, the knot holds it and friction has no say.
 */
final class FindSideFriction {

    /** After so many the length is as exact as a double. */
    private static final int HALVINGS = 55;

    /** A side without a leg keeps at least this part of the loop: nearer than that, the master lies at the end of the sling. */
    private static final double LEAST = 1e-3;

    private final Vector3 load;

    /** Points and ends of slings, the strands of the slings, and nothing else but the master. */
    private final Network slings;

    private final Side first;
    private final Side second;

    /** Of what the master leaves to the two sides together [m]. */
    private final double whole;

    private final double friction;
    private Vector3 master;

    /**
     * One side of the master.
     *
     * @param label of its strand
     * @param node to which it is laid
     * @param leg that is always there; empty on a loop
     * @param slider of which it has a part
     * @param sliders parallel strands of that part
     */
    private record Side(String label, int node, Optional<Strand> leg, Strand slider, int sliders) {

        /** The leg and that much of the slider, which act as one strand. */
        Strand with(double length, int master) {
            double give = leg.map(own -> own.unloadedMetres() / (own.count() * own.stiffnessKilonewtons()))
                            .orElse(0.0)
                    + length / (sliders * slider.stiffnessKilonewtons());
            double unloaded = leg.map(Strand::unloadedMetres).orElse(0.0) + length;
            return Strand.open(label, List.of(node, master), unloaded, unloaded / give, 1);
        }
    }

    private FindSideFriction(RigInput input) {
        Network network = LayStrands.of(input);
        boolean limited = input.rig().limiters().isPresent();
        int others = limited ? 3 : 1;
        int limiterKnots = limited ? 2 : 0;
        List<Vector3> free =
                new ArrayList<>(network.free().subList(0, network.free().size() - 1 - limiterKnots));
        free.add(input.rig().focus());
        List<Strand> strands = network.strands();
        this.load = input.load()
                .direction(input.load().toward())
                .times(input.load().weight().inKilonewtons());
        this.slings = new Network(network.fixed(), network.owners(), free, strands.subList(others, strands.size()));
        if (limited) {
            Strand slider = strands.get(2);
            this.first = leg(strands.get(0), slider);
            this.second = leg(strands.get(1), slider);
            this.whole = slider.unloadedMetres();
        } else {
            Strand loop = strands.get(0);
            this.first = new Side("first side", loop.path().get(0), Optional.empty(), loop, 2 * loop.count());
            this.second = new Side("second side", loop.path().get(2), Optional.empty(), loop, 2 * loop.count());
            this.whole = loop.unloadedMetres() / 2;
        }
        this.friction = input.rig().friction().orElseThrow();
        this.master = input.rig().focus();
    }

    private static Side leg(Strand leg, Strand slider) {
        return new Side(leg.label(), leg.path().get(0), Optional.of(leg), slider, slider.count());
    }

    /** What the two sides do with a certain length of the slider on the first. */
    private record Sides(double first, double second, double turn) {

        /** How far the first side is from slipping over to the second, in the logarithm of the tensions; below 0: it slips. */
        double beforeFirstSlips(double friction) {
            return friction * turn - logarithm();
        }

        double beforeSecondSlips(double friction) {
            return friction * turn + logarithm();
        }

        private double logarithm() {
            return Math.log(first) - Math.log(second);
        }

        double share() {
            return first / (first + second);
        }
    }

    /**
     * The range at the aim.
     *
     * @param input of the limited kind, or of the sliding kind over two points
     */
    static FrictionRange of(RigInput input) {
        FindSideFriction find = new FindSideFriction(input);
        double shortest = find.first.leg().isPresent() ? 0 : LEAST * find.whole;
        double longest = find.whole - shortest;
        double least = boundary(shortest, longest, length -> find.at(length).beforeFirstSlips(find.friction) >= 0);
        double most = boundary(shortest, longest, length -> find.at(length).beforeSecondSlips(find.friction) < 0);
        double high = find.at(least).share();
        double low = Math.min(find.at(most).share(), high);
        return new FrictionRange(
                List.of(
                        new ShareRange(input.points().get(0).name(), low, high),
                        new ShareRange(input.points().get(1).name(), 1 - high, 1 - low)),
                Sentence.NONE);
    }

    /** Where a length of the slider on the first side begins to be long enough; the shortest where each is, the longest where none is. */
    private static double boundary(double shortest, double longest, DoublePredicate longEnough) {
        if (longEnough.test(shortest)) {
            return shortest;
        }
        if (!longEnough.test(longest)) {
            return longest;
        }
        double low = shortest;
        double high = longest;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (longEnough.test(middle)) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return high;
    }

    private Sides at(double length) {
        Strand one = first.with(length, slings.master());
        Strand another = second.with(whole - length, slings.master());
        List<Strand> strands = new ArrayList<>(List.of(one, another));
        strands.addAll(slings.strands());
        List<Vector3> free = new ArrayList<>(slings.free());
        free.set(free.size() - 1, master);
        Equilibrium rest = FindEquilibrium.of(new Network(slings.fixed(), slings.owners(), free, strands), load);
        master = rest.master();
        double pull = rest.tension(0);
        double other = rest.tension(1);
        if (pull == 0 || other == 0) {
            return new Sides(pull, other, 0);
        }
        double between = rest.place(first.node())
                .minus(master)
                .degreesTo(rest.place(second.node()).minus(master));
        return new Sides(pull, other, Math.PI - Math.toRadians(between));
    }
}
