package thalweg.rig;

import java.util.List;
import java.util.function.DoublePredicate;

/**
 * Finds between which shares friction may leave the two points of a rig whose master slides between limiter knots.
 *
 * <p>As in {@link FindFriction}, the ratio of the tensions on the two sides of the master stays within {@code exp(± mu
 * beta)}. Each side is a leg and what the master leaves of the slider there; with a certain length of it on the first
 * side, both are tied strands, and their rest follows. The more of it there is, the less that side pulls. Where the
 * slider would slip until a knot comes up against the master, the knot holds it and friction has no say.
 */
final class FindLimitedFriction {

    /** After so many the length is as exact as a double. */
    private static final int HALVINGS = 55;

    private final Vector3 load;
    private final List<Vector3> points;
    private final Strand firstLeg;
    private final Strand secondLeg;
    private final Strand slider;
    private final double friction;
    private Vector3 master;

    private FindLimitedFriction(RigInput input) {
        Network network = LayStrands.of(input);
        this.load = input.load()
                .direction(input.load().toward())
                .times(input.load().weight().inKilonewtons());
        this.points = network.fixed();
        this.firstLeg = network.strands().get(0);
        this.secondLeg = network.strands().get(1);
        this.slider = network.strands().get(2);
        this.friction = input.rig().friction().orElseThrow();
        this.master = input.rig().focus();
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
     * @param input of the limited kind
     */
    static FrictionRange of(RigInput input) {
        FindLimitedFriction find = new FindLimitedFriction(input);
        double whole = find.slider.unloadedMetres();
        double least = find.boundary(whole, length -> find.at(length).beforeFirstSlips(find.friction) >= 0);
        double most = find.boundary(whole, length -> find.at(length).beforeSecondSlips(find.friction) < 0);
        double high = find.at(least).share();
        double low = Math.min(find.at(most).share(), high);
        return new FrictionRange(
                List.of(
                        new ShareRange(input.points().get(0).name(), low, high),
                        new ShareRange(input.points().get(1).name(), 1 - high, 1 - low)),
                "");
    }

    /**
     * Where a length of the slider on the first side begins to be long enough; 0 where each is, the whole where none is.
     */
    private double boundary(double whole, DoublePredicate longEnough) {
        if (longEnough.test(0)) {
            return 0;
        }
        if (!longEnough.test(whole)) {
            return whole;
        }
        double low = 0;
        double high = whole;
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
        Strand first = side(0, firstLeg, length);
        Strand second = side(1, secondLeg, slider.unloadedMetres() - length);
        Equilibrium rest = FindEquilibrium.of(new Network(points, List.of(master), List.of(first, second)), load);
        master = rest.master();
        double pull = rest.tension(0);
        double other = rest.tension(1);
        if (pull == 0 || other == 0) {
            return new Sides(pull, other, 0);
        }
        double between = points.get(0).minus(master).degreesTo(points.get(1).minus(master));
        return new Sides(pull, other, Math.PI - Math.toRadians(between));
    }

    /** A leg and that much of the slider, which act as one strand. */
    private Strand side(int point, Strand leg, double length) {
        double give = leg.unloadedMetres() / (leg.count() * leg.stiffnessKilonewtons())
                + length / (slider.count() * slider.stiffnessKilonewtons());
        double unloaded = leg.unloadedMetres() + length;
        return Strand.open(leg.label(), List.of(point, 2), unloaded, unloaded / give, 1);
    }
}
