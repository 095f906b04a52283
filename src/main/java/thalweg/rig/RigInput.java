package thalweg.rig;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import thalweg.units.Force;

/**
 * A rig that can be computed. {@link RigDraft#check} makes one from what was typed or read.
 *
 * @param name may be empty
 * @param points 1 to 6, names unique, no two in one place, none at the focus
 * @param load what pulls at the master, and where; over a redirect, towards it
 * @param rig how the strands are laid
 * @param assumed keys of the rig file that were not stated and stand at their defaults, in the order of the file
 * @param redirect over which the rope runs from the master to the load; empty where the load hangs from the master
 */
public record RigInput(
        String name,
        List<RigPoint> points,
        RigLoad load,
        RigSetup rig,
        List<String> assumed,
        Optional<RigRedirect> redirect) {

    /** Two places nearer than this are one place [m]; our choice, the thickness of a finger nail. */
    static final double ONE_PLACE_METRES = 1e-3;

    /** What the connector at the master is called. */
    static final String MASTER_CONNECTOR = "master connector";

    public RigInput {
        points = List.copyOf(points);
        assumed = List.copyOf(assumed);
        int count = points.size();
        if (count < rig.kind().fewestPoints() || count > rig.kind().mostPoints()) {
            throw new IllegalArgumentException("a rig has as many points as its kind takes");
        }
        if (rig.slack().size() != count) {
            throw new IllegalArgumentException("every leg has a slack, if only 0");
        }
        if (points.stream().map(RigPoint::name).distinct().count() != count) {
            throw new IllegalArgumentException("the names of points are unique");
        }
        for (int i = 0; i < count; i++) {
            Vector3 at = points.get(i).at();
            boolean shared = IntStream.range(0, i)
                    .mapToObj(points::get)
                    .anyMatch(other -> at.distance(other.at()) < ONE_PLACE_METRES);
            if (shared || at.distance(rig.focus()) < ONE_PLACE_METRES) {
                throw new IllegalArgumentException("points and focus are in different places");
            }
            int point = i;
            RigPoint laidTo = points.get(i);
            boolean legless = rig.limiters()
                    .map(limiters -> limiters.fromFocus().get(point).metres())
                    .filter(metres -> !(metres < Slung.end(laidTo, rig.focus()).distance(rig.focus())))
                    .isPresent();
            if (Slung.isLeg(laidTo) && !rig.kind().takesSlingsAsLegs()) {
                throw new IllegalArgumentException("a sling ends where the rest of the rig is laid to it");
            }
            if (legless) {
                throw new IllegalArgumentException("a limiter knot leaves its leg a length");
            }
        }
    }

    /** A rig whose load hangs from the master. */
    public RigInput(String name, List<RigPoint> points, RigLoad load, RigSetup rig, List<String> assumed) {
        this(name, points, load, rig, assumed, Optional.empty());
    }

    /** The load as it was stated, beyond a redirect where there is one. */
    public RigLoad statedLoad() {
        return redirect.map(RigRedirect::beyond).orElse(load);
    }

    /** The same rig with the load hanging from the master, as it does without the redirect. */
    RigInput freed() {
        return new RigInput(name, points, statedLoad(), rig, assumed);
    }

    /** What a point of this rig is taken to hold. */
    public PartStrength strengthOf(RigPoint point) {
        return FindStrength.of(this, point);
    }

    /**
     * What parallel strands of this rig are taken to hold together.
     *
     * @param label of the strand; a sling has strands of its own
     * @param count of them, 1 or more
     */
    public PartStrength strengthOfStrands(String label, int count) {
        return StrandNames.slungPoint(this, label)
                .flatMap(point -> points.get(point).sling())
                .map(sling -> SlingStrength.of(sling, label, count, rig.traits().derating()))
                .orElseGet(() -> FindStrength.of(this, count));
    }

    /** What the connector in a point is taken to hold, the way it is pulled; empty where nobody stated one. */
    Optional<PartStrength> connectorAt(RigPoint point) {
        return point.traits().connector().map(connector -> FindStrength.of(connector, connectorLabel(point)));
    }

    /** The same for the one at the master. */
    Optional<PartStrength> masterConnector() {
        return rig.traits().connector().map(connector -> FindStrength.of(connector, MASTER_CONNECTOR));
    }

    /** "A connector". */
    static String connectorLabel(RigPoint point) {
        return StrandNames.connector(point);
    }

    /** What each point is taken to hold [kN], in their order; empty where one is unknown. */
    Optional<double[]> strengths() {
        List<Force> known = points.stream()
                .flatMap(point -> strengthOf(point).left().stream())
                .toList();
        return known.size() == points.size()
                ? Optional.of(known.stream().mapToDouble(Force::inKilonewtons).toArray())
                : Optional.empty();
    }

    /** The names of the points of which nobody knows what they hold, in their order. */
    List<String> unknownStrengths() {
        return points.stream()
                .filter(point -> strengthOf(point).left().isEmpty())
                .map(RigPoint::name)
                .toList();
    }

    /** "stated" where every point is taken to hold what was stated of it, else "taken". */
    String believed() {
        return points.stream()
                .map(point -> strengthOf(point).believed())
                .filter(word -> !word.equals(PartStrength.STATED))
                .findFirst()
                .orElse(PartStrength.STATED);
    }
}
