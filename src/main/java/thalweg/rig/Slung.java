package thalweg.rig;

import java.util.List;

/**
 * Where a sling lies, unloaded and just taut.
 *
 * @param sides the one or two places at which it leaves its point, the left one first as seen from the front [m]
 * @param end where its end hangs; the focus, where it reaches to the master [m]
 */
record Slung(List<Vector3> sides, Vector3 end) {

    /** Directions nearer to one another than this are the same [-]. */
    private static final double SAME = 1e-6;

    private static final Vector3 RIGHT = new Vector3(1, 0, 0);
    private static final Vector3 OUT = new Vector3(0, 0, 1);

    Slung {
        sides = List.copyOf(sides);
    }

    /** Where the sling of a point lies that has one. */
    static Slung of(RigPoint point, Vector3 focus) {
        RigSling sling = point.sling().orElseThrow();
        Vector3 at = point.at();
        Vector3 end = end(point, focus);
        if (sling.tie().sides() == 1) {
            return new Slung(List.of(at), end);
        }
        Vector3 arm = across(focus.minus(at)).times(sling.width().metres() / 2);
        return new Slung(List.of(at.minus(arm), at.plus(arm)), end);
    }

    /** From where a rig is laid to a point: the end of its sling, or the point itself [m]. */
    static Vector3 end(RigPoint point, Vector3 focus) {
        return point.sling()
                .map(sling -> sling.reach()
                        .map(reach -> {
                            Vector3 way = focus.minus(point.at());
                            return point.at().plus(way.times(reach.metres() / way.length()));
                        })
                        .orElse(focus))
                .orElse(point.at());
    }

    /** Whether a sling ends before the master, and a leg or a loop goes on from there. */
    static boolean endsBefore(RigPoint point) {
        return point.sling().flatMap(RigSling::reach).isPresent();
    }

    /** Whether a sling reaches to the master, and is the point's leg. */
    static boolean isLeg(RigPoint point) {
        return point.sling().isPresent() && !endsBefore(point);
    }

    /** The unit vector square to a line that lies nearest to the horizontal along the wall; out of the wall for a line along it. */
    private static Vector3 across(Vector3 line) {
        Vector3 along = line.times(1 / line.length());
        Vector3 across = RIGHT.minus(along.times(along.dot(RIGHT)));
        return across.length() < SAME ? OUT : across.times(1 / across.length());
    }
}
