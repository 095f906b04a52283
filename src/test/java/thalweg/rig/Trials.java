package thalweg.rig;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import thalweg.units.Angle;
import thalweg.units.Force;
import thalweg.units.Length;

/** Plain rigs and falls whose answers are known from outside, computed by the program. */
final class Trials {

    /** So stiff, and so lightly loaded, that angles stay what they were tied to. */
    private static final double STIFF_KN = 100_000;

    private static final double LIGHT_KN = 1e-5;

    private static final Vector3 DOWN = new Vector3(0, -1, 0);

    private Trials() {}

    /** Load on a point of two equal ways to a master, in parts of the load; A is one of the points. */
    static double partOfPair(RigKind kind, double includedDegrees) {
        RigDraft pair = Rigs.pair(includedDegrees)
                .withLoad(LoadDraft.ofForce(LIGHT_KN, 0, 0))
                .withRig(SetupDraft.of(kind, 0, 0, 0, STIFF_KN));
        return Rigs.steady(Rigs.input(pair)).at("A").force().inKilonewtons() / LIGHT_KN;
    }

    /** The same for points that are tied at one knot, by their names. */
    static Map<String, Double> parts(List<PointDraft> points) {
        RigDraft draft = Rigs.focused(points, Vector3.ZERO, LIGHT_KN, 0, 0)
                .withRig(SetupDraft.of(RigKind.FOCUSED, 0, 0, 0, STIFF_KN));
        Map<String, Double> parts = new TreeMap<>();
        Rigs.steady(Rigs.input(draft))
                .points()
                .forEach(force -> parts.put(force.point(), force.force().inKilonewtons() / LIGHT_KN));
        return parts;
    }

    /** Tension in each strand of a sling that is laid round a wide point, both bights clipped, in parts of the load. */
    static double strandOfBasket(double includedDegrees) {
        double half = Math.toRadians(includedDegrees / 2);
        PointDraft point = PointDraft.of("A", 0, 1, 0)
                .slungWith(
                        PointKind.BOULDER,
                        SlingDraft.of(SlingTie.BASKET, 2 * 0.5 * Math.tan(half)).withReach(0.5));
        RigDraft draft = Rigs.focused(List.of(point), Vector3.ZERO, LIGHT_KN, 0, 0)
                .withRig(SetupDraft.of(RigKind.SINGLE, 0, 0, 0, STIFF_KN));
        return Rigs.steady(Rigs.input(draft)).strands().stream()
                        .filter(strand -> strand.label().equals("A sling"))
                        .mapToDouble(strand -> strand.tension().inKilonewtons())
                        .max()
                        .orElseThrow()
                / LIGHT_KN;
    }

    /** Force on a redirect straight below a rig, by the angle at which the load pulls from there, in parts of the load. */
    static double onRedirect(double degrees) {
        RigDraft draft = Rigs.pair(60)
                .withLoad(LoadDraft.ofForce(LIGHT_KN, degrees, 0))
                .withRig(SetupDraft.of(RigKind.FOCUSED, 0, 0, 0, STIFF_KN))
                .withRedirect(RedirectDraft.at(0, -1, 0));
        return Rigs.answer(draft).redirect().orElseThrow().force().inKilonewtons() / LIGHT_KN;
    }

    /** Force on a point of a pair in one line that is just taut [kN]. */
    static double flat(RigKind kind, double kilonewtons) {
        RigDraft flat = Rigs.pair(180)
                .withLoad(LoadDraft.ofForce(kilonewtons, 0, 0))
                .withRig(SetupDraft.of(kind, 0, 0, 0, Rigs.STIFFNESS_KN));
        return Rigs.steady(Rigs.input(flat)).at("A").force().inKilonewtons();
    }

    /** The most that friction lets the first of two points bear, over what the second bears then. */
    static double mostOverLeast(PointDraft first, PointDraft second, double friction) {
        RigInput input = Rigs.input(Rigs.focused(List.of(first, second), Vector3.ZERO, 1e-4, 0, 0)
                .withRig(SetupDraft.of(RigKind.SLIDING, 0, 0, 0, STIFF_KN).withSliding(true, friction)));
        double most = FindFriction.of(input).shares().get(0).most();
        return most / (1 - most);
    }

    /**
     * The largest pull of a weight that falls on a spring, or hangs on it already where the height is 0 [N].
     *
     * @param metres above the end of the spring's reach
     * @param spring [N/m]
     * @param unloaded length of the spring [m]
     */
    static double fall(double newtons, double metres, double spring, double unloaded) {
        double stiffness = spring * unloaded / 1000;
        Network network = new Network(
                List.of(Vector3.ZERO),
                List.of(new Vector3(0, metres - unloaded, 0)),
                List.of(Strand.open("bar", List.of(0, 1), unloaded, stiffness, 1)));
        return peak(network, newtons);
    }

    /** A V of very stiff legs, half an angle to either side, that loses one: the peak in parts of the load. */
    static double stiffV(double halfDegrees) {
        double t = Math.toRadians(halfDegrees);
        List<Vector3> points =
                List.of(new Vector3(Math.sin(t), Math.cos(t), 0), new Vector3(-Math.sin(t), Math.cos(t), 0));
        Strand first = Strand.open("first", List.of(0, 2), 1, 5_000, 1);
        Strand second = Strand.open("second", List.of(1, 2), 1, 5_000, 1);
        Network whole = new Network(points, List.of(Vector3.ZERO), List.of(first, second));
        Vector3 master = FindEquilibrium.of(whole, DOWN).master();
        return peak(new Network(points, List.of(master), List.of(first)), 1000) / 1000;
    }

    /** A mass on one stiff leg that is let go from the side, just taut: the peak in parts of the load. */
    static double pendulum(double degrees) {
        double t = Math.toRadians(degrees);
        Network side = new Network(
                List.of(Vector3.ZERO),
                List.of(new Vector3(Math.sin(t), -Math.cos(t), 0)),
                List.of(Strand.open("leg", List.of(0, 1), 1 - 1e-9, 2_000, 1)));
        return peak(side, 100) / 100;
    }

    private static double peak(Network network, double newtons) {
        Angle none = new Angle(0);
        RigLoad load = new RigLoad(
                new Force(newtons), Optional.empty(), none, none, none, new Length(0), Optional.empty(), 0.2);
        int points = network.fixed().size();
        return Motion.of(new HangingMass(network, load, DOWN), load, points, Motion.PRECISION)
                        .orElseThrow()
                        .points()[0]
                * 1000;
    }

    /** The peak on B when A lets go [kN]. */
    static double peakOnB(RigDraft draft) {
        return Rigs.answer(draft).losses().stream()
                .filter(loss -> loss.point().equals("A"))
                .findFirst()
                .flatMap(PointLoss::aftermath)
                .flatMap(Aftermath::peaks)
                .flatMap(peaks -> peaks.on("B"))
                .orElseThrow()
                .inKilonewtons();
    }

    /** A load of 200 lb on a sliding loop of webbing that falls about two feet when A lets go. */
    static RigDraft fallOfTwoFeet(double ropeOutMetres) {
        LoadDraft load = new LoadDraft(
                OptionalDouble.of(90.7),
                OptionalDouble.empty(),
                OptionalDouble.of(0),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.of(ropeOutMetres),
                OptionalDouble.of(40),
                OptionalDouble.empty());
        return Rigs.focused(
                        List.of(PointDraft.of("A", -0.2, 0.57, 0), PointDraft.of("B", 0.2, 0.57, 0)),
                        Vector3.ZERO,
                        1,
                        0,
                        0)
                .withLoad(load)
                .withRig(SetupDraft.of(RigKind.SLIDING, 0, 0, 0, Rigs.STIFFNESS_KN));
    }

    /** The peak on B when A lets go, in parts of what the energy at the start allows. */
    static double partOfBound(RigDraft draft) {
        return peakOnB(draft) / bound(Rigs.input(draft), 0);
    }

    /**
     * What the one point that is left of two can be pulled with at most: {@code W (1 + sqrt(1 + 2 k h / W + (k e0 /
     * W)^2))} [kN]. h is the fall to where the strand is taut below the point, e0 how far it is stretched at the start, k
     * its spring.
     *
     * @param gone the number of the other point
     */
    static double bound(RigInput input, int gone) {
        Vector3 start = Rigs.steady(input).master();
        Vector3 at = input.points().get(1 - gone).at();
        Strand left = Splice.of(LayStrands.left(input, gone, start).orElseThrow())
                .network()
                .strands()
                .get(0);
        int stretches = left.stretches();
        double reach = left.unloadedMetres() / stretches;
        double spring = stretches * stretches * left.count() * left.stiffnessKilonewtons() / left.unloadedMetres();
        double weight = input.load().weight().inKilonewtons();
        Vector3 down = input.load().direction(input.load().toward());
        double fall = at.dot(down) + reach - start.dot(down);
        double stretched = Math.max(0, at.distance(start) - reach);
        return weight * (1 + Math.sqrt(1 + 2 * spring * fall / weight + Math.pow(spring * stretched / weight, 2)));
    }
}
