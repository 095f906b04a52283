package thalweg.rig;

import java.util.List;
import thalweg.fault.Sentence;

/**
 * Finds between which shares friction may leave the two points of a sliding rig.
 *
 * <p>The master rests wherever the ratio of the tensions on its two sides stays within {@code exp(± mu beta)}, the
 * capstan equation; beta is by how much the strand turns around the master, half a turn less the angle between its
 * sides. At either end of the range the ratio is that number. Then the angle between the sides says how each of them
 * stands to the load and how hard it pulls, and one such angle fits the strand: with s of it, unloaded, on one side, and
 * the rest on the other, each stretched by its own tension.
 *
 * @see "Hibbeler, Engineering Mechanics: Statics, 8.5 Frictional forces on flat belts"
 */
final class FindFriction {

    /** After so many the angle is as exact as a double. */
    private static final int HALVINGS = 60;

    /** Points nearer to one line along the load than this part of their distance lie in it. */
    private static final double IN_LINE = 1e-9;

    private static final Sentence THREE_OR_MORE = Sentence.of(
            "Friction where the loop passes over three or more points is not computed: the range is unknown, and equal"
                    + " shares are the ideal.");

    /** How far the second point lies to the side of the first, across the load [m], 0 or more. */
    private final double across;

    /** How far it lies above the first, against the load [m]. */
    private final double above;

    /** Half of the strand, which is what one of the two stretches on each side take together, unloaded [m]. */
    private final double unloaded;

    private final double stiffness;
    private final double weight;

    private FindFriction(RigInput input) {
        Vector3 down = input.load().direction(input.load().toward());
        Vector3 between = input.points().get(1).at().minus(input.points().get(0).at());
        Strand loop = LayStrands.of(input).strands().get(0);
        this.above = -between.dot(down);
        this.across = between.plus(down.times(above)).length();
        this.unloaded = loop.unloadedMetres() / 2;
        this.stiffness = loop.stiffnessKilonewtons();
        this.weight = input.load().weight().inKilonewtons();
    }

    /**
     * The range at the aim.
     *
     * @param input of the kind that slides
     */
    static FrictionRange of(RigInput input) {
        List<RigPoint> points = input.points();
        if (points.size() == 1) {
            return new FrictionRange(List.of(new ShareRange(points.get(0).name(), 1, 1)), Sentence.NONE);
        }
        if (points.size() > 2) {
            return new FrictionRange(List.of(), THREE_OR_MORE);
        }
        if (points.stream().anyMatch(point -> point.sling().isPresent())) {
            return FindSideFriction.of(input);
        }
        double friction = input.rig().sliding().orElseThrow().friction();
        FindFriction find = new FindFriction(input);
        double most = find.shareOfFirst(friction);
        double least = find.shareOfFirst(-friction);
        return new FrictionRange(
                List.of(
                        new ShareRange(points.get(0).name(), least, most),
                        new ShareRange(points.get(1).name(), 1 - most, 1 - least)),
                Sentence.NONE);
    }

    /** The share of the first point where friction, with its sign, only just holds. */
    private double shareOfFirst(double friction) {
        if (across < IN_LINE * Math.abs(above)) {
            return share(Math.exp(friction * Math.PI));
        }
        double narrow = 0;
        double wide = Math.PI;
        for (int i = 0; i < HALVINGS; i++) {
            double angle = (narrow + wide) / 2;
            if (excess(angle, friction) > 0) {
                narrow = angle;
            } else {
                wide = angle;
            }
        }
        return share(Math.exp(friction * (Math.PI - wide)));
    }

    private static double share(double ratio) {
        return ratio / (1 + ratio);
    }

    /**
     * By how much the strand is too short for its sides to stand at that angle [m]; below 0 where it is too long, and
     * where the points cannot be seen at such an angle.
     *
     * @param angle between the sides, above 0 and below half a turn [rad]
     */
    private double excess(double angle, double friction) {
        double ratio = Math.exp(friction * (Math.PI - angle));
        double first = Math.atan2(Math.sin(angle), ratio + Math.cos(angle));
        double second = angle - first;
        double toFirst = (across * Math.cos(second) - above * Math.sin(second)) / Math.sin(angle);
        double toSecond = (across * Math.cos(first) + above * Math.sin(first)) / Math.sin(angle);
        if (toFirst <= 0 || toSecond <= 0) {
            return -unloaded;
        }
        double firstTension = weight / 2 * Math.sin(second) / Math.sin(angle);
        double secondTension = weight / 2 * Math.sin(first) / Math.sin(angle);
        return toFirst / (1 + firstTension / stiffness) + toSecond / (1 + secondTension / stiffness) - unloaded;
    }
}
