package thalweg.rig;

import java.util.List;
import java.util.Optional;
import thalweg.units.Angle;

/**
 * A rig at rest under a pull in one direction.
 *
 * @param direction of the pull, from straight down in the plane of the wall, positive to the right
 * @param master where it came to rest [m]
 * @param points what each bears, in the order of the input
 * @param strands every strand, in the order in which they are laid
 * @param knots where limiter knots hang, in the order of the input; empty for a rig without
 * @param angle the largest between two loaded strands at the master; empty where fewer than two are loaded
 */
public record RigState(
        Angle direction,
        Vector3 master,
        List<PointForce> points,
        List<StrandPull> strands,
        List<KnotPlace> knots,
        Optional<Angle> angle) {

    public RigState {
        points = List.copyOf(points);
        strands = List.copyOf(strands);
        knots = List.copyOf(knots);
    }

    /** What the point of that name bears. */
    public PointForce at(String point) {
        return points.stream()
                .filter(force -> force.point().equals(point))
                .findFirst()
                .orElseThrow();
    }
}
