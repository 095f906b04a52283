package thalweg.rig;

import java.util.Optional;
import java.util.OptionalDouble;
import thalweg.units.Force;
import thalweg.units.Length;

/**
 * What is slung round a point. It is taken not to slip round the point, so that its sides share by where its end hangs.
 *
 * @param tie how it goes round
 * @param width how wide the point is between the places where the sides leave it, 0 or more; 0 where there is one such place
 * @param around the girth of the point, above 0; empty where nobody measured it
 * @param reach from the point to the sling's end, hanging just taut, above 0; empty where it reaches to the master
 * @param stiffness force per unit strain of one strand, above 0; empty where it is taken to be that of the rig's strands
 * @param strandStrength of one strand without knots, above 0; empty where unknown
 * @param knotEfficiency share of the strength that its knot leaves [-], above 0 and at most 1; empty where unknown
 * @param textile how far its strands have suffered
 */
public record RigSling(
        SlingTie tie,
        Length width,
        Optional<Length> around,
        Optional<Length> reach,
        Optional<Force> stiffness,
        Optional<Force> strandStrength,
        OptionalDouble knotEfficiency,
        Textile textile) {

    public RigSling {
        boolean lengths = around.stream().allMatch(girth -> girth.metres() > 0)
                && reach.stream().allMatch(metres -> metres.metres() > 0);
        if (width.metres() < 0 || !lengths) {
            throw new IllegalArgumentException("a sling goes round something, and its end hangs beyond it");
        }
        if (stiffness.stream().anyMatch(force -> force.newtons() <= 0)
                || strandStrength.stream().anyMatch(force -> force.newtons() <= 0)) {
            throw new IllegalArgumentException("a sling stretches, and a known strength is above 0");
        }
    }
}
