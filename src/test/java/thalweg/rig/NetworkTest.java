package thalweg.rig;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Strands that slide through nodes, closed strands and free knots, whether or not a kind of rig uses them yet. */
class NetworkTest {

    private static final Vector3 LEFT = new Vector3(-0.3, 0, 0);
    private static final Vector3 RIGHT = new Vector3(0.4, 0.15, 0.05);

    /** A loop through two points and the master with the bottom angle a: a point bears {@code 1 / (2 cos(45 + a/4))}. */
    @ParameterizedTest
    @ValueSource(doubles = {30, 60, 90, 120, 150})
    void aLoopThroughBothPointsPullsThemAsItsFormulaSays(double degrees) {
        double half = Math.toRadians(degrees / 2);
        Vector3 left = new Vector3(-Math.sin(half), Math.cos(half), 0);
        Vector3 right = new Vector3(Math.sin(half), Math.cos(half), 0);
        double unloaded = 2 + left.distance(right);
        Strand loop = Strand.closed("loop", List.of(0, 2, 1), unloaded, 100_000, 1);
        Network network = new Network(List.of(left, right), List.of(Vector3.ZERO), List.of(loop));

        Equilibrium rest = FindEquilibrium.of(network, down(1e-4));

        double factor = rest.pullOn(0).length() / 1e-4;
        assertThat(factor).isCloseTo(1 / (2 * Math.cos(Math.toRadians(45 + degrees / 4))), within(1e-4));
    }

    @Test
    void aStrandThatSlidesOverTheMasterHasOneTensionAndHalvesItsAngle() {
        Strand slider = Strand.open("slider", List.of(0, 2, 1), 1.4, 50, 1);
        Network network = new Network(List.of(LEFT, RIGHT), List.of(new Vector3(0, -0.5, 0)), List.of(slider));
        Vector3 load = new Vector3(0.4, -0.9, 0.1);

        Equilibrium rest = FindEquilibrium.of(network, load);

        assertThat(rest.pullOn(0).length()).isCloseTo(rest.pullOn(1).length(), within(1e-10));
        Vector3 toLeft = LEFT.minus(rest.master());
        Vector3 toRight = RIGHT.minus(rest.master());
        assertThat(toLeft.degreesTo(load.times(-1))).isCloseTo(toRight.degreesTo(load.times(-1)), within(1e-6));
    }

    @Test
    void aLoopOverThreePointsPullsAllOfThemAlike() {
        List<Vector3> points = List.of(LEFT, RIGHT, new Vector3(0.05, 0.3, 0));
        Vector3 focus = new Vector3(0, -0.6, 0);
        double unloaded = 2 * points.stream().mapToDouble(focus::distance).sum();
        Strand loop = Strand.closed("loop", List.of(0, 3, 1, 3, 2, 3), unloaded, 60, 1);
        Network network = new Network(points, List.of(focus), List.of(loop));

        Equilibrium rest = FindEquilibrium.of(network, new Vector3(0.2, -0.9, 0));

        double first = rest.pullOn(0).length();
        assertThat(first).isCloseTo(2 * rest.tension(0), within(1e-10));
        assertThat(rest.pullOn(1).length()).isCloseTo(first, within(1e-10));
        assertThat(rest.pullOn(2).length()).isCloseTo(first, within(1e-10));
        assertThat(sum(rest, 3)).isCloseTo(new Vector3(0.2, -0.9, 0).length(), within(1e-10));
    }

    @Test
    void aKnotThatJamsAtTheMasterPassesItsLegsPullOn() {
        // Two legs end in knots 5 cm short of the focus with a slider between; the load pulls far to the left,
        // so that the left leg hangs slack and its knot has run into the master.
        Vector3 focus = new Vector3(0, -0.6, 0);
        Network network = limited(focus, 0.05);
        Vector3 load = new Vector3(-0.9, -0.3, 0);

        Equilibrium rest = FindEquilibrium.of(network, load);

        assertThat(rest.place(2).distance(rest.master())).isLessThan(1e-6);
        assertThat(rest.pullOn(0).plus(rest.pullOn(1)).minus(load).length()).isLessThan(1e-5);
        assertLeast(network, load, rest);
    }

    /** The lowest of three points stops the master that slides down to it, and bears what the others leave. */
    @Test
    void aPointIntoWhichTheMasterSlidesBearsWhatTheOthersLeave() {
        List<Vector3> points = List.of(LEFT, RIGHT, new Vector3(0, -0.3, 0));
        double fits = 2 * (points.get(2).distance(LEFT) + points.get(2).distance(RIGHT));
        Strand loop = Strand.closed("loop", List.of(0, 3, 1, 3, 2, 3), fits * 0.99, 60, 1);
        Network network = new Network(points, List.of(new Vector3(0.05, -0.1, 0)), List.of(loop));

        Equilibrium rest = FindEquilibrium.of(network, down(0.9));

        assertThat(rest.master().distance(points.get(2))).isLessThan(1e-6);
        double tension = rest.tension(0);
        assertThat(rest.pullOn(0).length()).isCloseTo(2 * tension, within(1e-9));
        assertThat(rest.pullOn(2).length()).isLessThan(2 * tension);
        Vector3 sum = rest.pullOn(0).plus(rest.pullOn(1)).plus(rest.pullOn(2));
        assertThat(sum.minus(down(0.9)).length()).isLessThan(1e-6);
        assertThat(rest.directionsFrom(3, loop)).hasSize(2);
        assertLeast(network, down(0.9), rest);
    }

    @Test
    void networksByChanceAgreeWithAnotherOptimiser() {
        SplittableRandom random = new SplittableRandom(77);
        for (int i = 0; i < 150; i++) {
            List<Vector3> points = List.of(
                    new Vector3(random.nextDouble(-0.6, -0.1), random.nextDouble(-0.2, 0.3), 0),
                    new Vector3(
                            random.nextDouble(0.1, 0.6), random.nextDouble(-0.2, 0.3), random.nextDouble(-0.2, 0.2)),
                    new Vector3(random.nextDouble(-0.1, 0.1), random.nextDouble(0.4, 0.8), 0));
            Vector3 focus = new Vector3(random.nextDouble(-0.1, 0.1), random.nextDouble(-1, -0.5), 0);
            double stiffness = random.nextDouble(20, 200);
            double loose = random.nextDouble(0.9, 1.1);
            Strand loop = Strand.closed(
                    "loop",
                    List.of(0, 3, 1, 3),
                    2 * loose * (focus.distance(points.get(0)) + focus.distance(points.get(1))),
                    stiffness,
                    1);
            Strand leg = Strand.open(
                    "leg", List.of(2, 3), focus.distance(points.get(2)) * random.nextDouble(1, 1.1), stiffness, 2);
            Vector3 load = new Vector3(random.nextDouble(-0.5, 0.5), -1, random.nextDouble(-0.2, 0.2));
            Network network = new Network(points, List.of(focus), List.of(loop, leg));

            Equilibrium rest = FindEquilibrium.of(network, load);

            EnergyByHand energy = byHand(network, load);
            double[] theirs = energy.minimum(new double[] {focus.x(), focus.y() - 0.02, focus.z() + 0.01});
            assertThat(energy.slope(theirs)).isLessThan(1e-8);
            for (int strand = 0; strand < 2; strand++) {
                int count = network.strands().get(strand).count();
                assertThat(count * rest.tension(strand))
                        .as(network.toString())
                        .isCloseTo(energy.tension(strand, theirs), within(1e-6));
            }
        }
    }

    @Test
    void noPlaceNearbyHasLessEnergyWhateverTheDirectionOfTheLoad() {
        for (int degrees = -170; degrees <= 180; degrees += 10) {
            double a = Math.toRadians(degrees);
            Vector3 load = new Vector3(Math.sin(a), -Math.cos(a), 0.05);
            Network network = limited(new Vector3(0, -0.6, 0), 0.1);

            assertLeast(network, load, FindEquilibrium.of(network, load));
        }
    }

    @Test
    void aSlackNetworkThatHangsFarAwayIsPulledTaut() {
        Strand leg = Strand.open("leg", List.of(0, 1), 5, 50, 1);
        Network network = new Network(List.of(Vector3.ZERO), List.of(new Vector3(0, 0.001, 0)), List.of(leg));

        Equilibrium rest = FindEquilibrium.of(network, new Vector3(0.6, -0.8, 0));

        assertThat(rest.tension(0)).isCloseTo(1, within(1e-11));
        assertThat(rest.master().distance(new Vector3(0.6, -0.8, 0).times(5.1))).isLessThan(1e-9);
    }

    /** Legs from both points to knots, and a slider from knot to knot through the master, which is node 4. */
    private static Network limited(Vector3 focus, double limit) {
        double one = focus.distance(LEFT) - limit;
        double two = focus.distance(RIGHT) - limit;
        return new Network(
                List.of(LEFT, RIGHT),
                List.of(
                        focus.plus(LEFT.minus(focus).times(0.2)),
                        focus.plus(RIGHT.minus(focus).times(0.2)),
                        focus),
                List.of(
                        Strand.open("A leg", List.of(0, 2), one, 70, 2),
                        Strand.open("B leg", List.of(1, 3), two, 70, 2),
                        Strand.open("slider", List.of(2, 4, 3), 2 * limit, 70, 1)));
    }

    private static void assertLeast(Network network, Vector3 load, Equilibrium rest) {
        EnergyByHand energy = byHand(network, load);
        double[] places = Energy.flat(rest.network().free());
        double least = energy.value(places);
        SplittableRandom random = new SplittableRandom(5);
        for (int i = 0; i < 2_000; i++) {
            double size = Math.pow(10, random.nextDouble(-6, 0));
            double[] other = places.clone();
            for (int a = 0; a < other.length; a++) {
                other[a] += size * random.nextDouble(-1, 1);
            }
            assertThat(energy.value(other)).as("%s at %s", network, load).isGreaterThan(least - 1e-10);
        }
    }

    private static EnergyByHand byHand(Network network, Vector3 load) {
        List<EnergyByHand.Cord> cords = new ArrayList<>();
        int fixed = network.fixed().size();
        for (Strand strand : network.strands()) {
            List<double[]> stops = new ArrayList<>();
            for (int node : strand.path()) {
                if (node < fixed) {
                    Vector3 at = network.fixed().get(node);
                    stops.add(new double[] {at.x(), at.y(), at.z()});
                } else {
                    stops.add(new double[] {node - fixed});
                }
            }
            double rate = strand.count() * strand.stiffnessKilonewtons() / strand.unloadedMetres();
            cords.add(new EnergyByHand.Cord(stops, strand.closed(), strand.unloadedMetres(), rate));
        }
        return new EnergyByHand(cords, network.free().size(), List.of(load.x(), load.y(), load.z()));
    }

    private static double sum(Equilibrium rest, int points) {
        Vector3 sum = Vector3.ZERO;
        for (int i = 0; i < points; i++) {
            sum = sum.plus(rest.pullOn(i));
        }
        return sum.length();
    }

    private static Vector3 down(double kilonewtons) {
        return new Vector3(0, -kilonewtons, 0);
    }
}
