package thalweg.rig;

import java.util.List;
import java.util.Optional;

/**
 * A rig across the directions in which its load may pull.
 *
 * @param directions 21 states at equal steps, from aim minus sway to aim plus sway; the aim is the middle one
 * @param worst the hardest pull on each point, in the order of the input
 * @param counted the pull on each point that counts most against its strength, in the order of the input
 * @param widest the widest angle; empty where no direction loads two strands at the master
 */
public record RigSector(
        List<RigState> directions, List<WorstForce> worst, List<CountedForce> counted, Optional<WidestAngle> widest) {

    /** How many directions are reported. */
    public static final int DIRECTIONS = 21;

    public RigSector {
        directions = List.copyOf(directions);
        worst = List.copyOf(worst);
        counted = List.copyOf(counted);
        if (directions.size() != DIRECTIONS) {
            throw new IllegalArgumentException("a sector has " + DIRECTIONS + " directions");
        }
    }

    /** The pull that counts most against the strength of the point of that name. */
    public CountedForce countedOn(String point) {
        return counted.stream()
                .filter(force -> force.point().equals(point))
                .findFirst()
                .orElseThrow();
    }

    /** The hardest pull on the point of that name. */
    public WorstForce worstOf(String point) {
        return worst.stream()
                .filter(force -> force.point().equals(point))
                .findFirst()
                .orElseThrow();
    }
}
