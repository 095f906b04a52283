package thalweg.rig;

import java.util.List;
import java.util.Optional;
import thalweg.units.Force;

/**
 * The largest forces within 2 s after a loss: model peaks, for a load at rest, dry, undamped.
 *
 * @param points every point that is left, in the order of the input
 * @param strands every strand that is left
 * @param held on the master, by all that holds it
 * @param rising whether a force is largest at the end of the 2 s, or the load still falls then without any, so that
 *     its peak may be still to come
 */
public record PeakForces(List<OnPoint> points, List<InStrand> strands, Force held, boolean rising) {

    /**
     * On a point.
     *
     * @param point its name
     * @param force the largest
     * @param counted the largest that counts against its strength; another one only for a bolt of two strengths
     */
    public record OnPoint(String point, Force force, Force counted) {}

    /**
     * In a strand.
     *
     * @param label such as "A leg"
     * @param tension the largest in one of its parallel strands
     */
    public record InStrand(String label, Force tension) {}

    public PeakForces {
        points = List.copyOf(points);
        strands = List.copyOf(strands);
    }

    /** The largest that counts against the strength of the point of that name; empty for the one that was lost. */
    public Optional<Force> countedOn(String point) {
        return points.stream()
                .filter(peak -> peak.point().equals(point))
                .map(OnPoint::counted)
                .findFirst();
    }

    /** The largest force on the point of that name; empty for the one that was lost. */
    public Optional<Force> on(String point) {
        return points.stream()
                .filter(peak -> peak.point().equals(point))
                .map(OnPoint::force)
                .findFirst();
    }
}
