package thalweg.rig;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import thalweg.units.Force;
import thalweg.units.Length;

/**
 * How the strands are laid between the points and the master.
 *
 * @param kind how, in a word
 * @param focus where the master sits, unloaded, with everything just taut [m]
 * @param stiffness force per unit strain of one strand, above 0
 * @param strands identical parallel strands in each leg, 1 or more; 1 where one loop serves all points
 * @param slack extra length of each leg, in the order of the points, 0 or more
 * @param sliding how the master slides; known for a sliding rig and for no other
 * @param limiters the knots that limit it; known for a limited rig and for no other
 * @param strandStrength of one strand without knots, above 0; empty where unknown
 * @param knotEfficiency share of the strength that the knots leave [-], above 0 and at most 1: as stated, or the nominal one
 *     of the knot; empty where unknown
 * @param traits what else is known of strands and master
 */
public record RigSetup(
        RigKind kind,
        Vector3 focus,
        Force stiffness,
        int strands,
        List<Length> slack,
        Optional<Sliding> sliding,
        Optional<Limiters> limiters,
        Optional<Force> strandStrength,
        OptionalDouble knotEfficiency,
        StrandTraits traits) {

    public RigSetup {
        slack = List.copyOf(slack);
        if (stiffness.newtons() <= 0 || strands < 1) {
            throw new IllegalArgumentException("a rig has strands, and they stretch");
        }
        if (sliding.isPresent() != (kind == RigKind.SLIDING)) {
            throw new IllegalArgumentException("a sliding rig says how it slides, and no other does");
        }
        if (limiters.isPresent() != (kind == RigKind.LIMITED)) {
            throw new IllegalArgumentException("a limited rig has limiters, and no other does");
        }
        if (slack.stream().anyMatch(length -> length.metres() < 0)) {
            throw new IllegalArgumentException("slack is 0 or more");
        }
        Optional<Double> knot = traits.knot().map(tied -> tied.nominal().left());
        if (knot.isPresent() && !knotEfficiency.equals(OptionalDouble.of(knot.get()))) {
            throw new IllegalArgumentException("a knot leaves its nominal share");
        }
    }

    /** Between the strand and a master that slides on it [-]; empty where it is tied. */
    public OptionalDouble friction() {
        Optional<Double> friction = sliding.map(Sliding::friction).or(() -> limiters.map(Limiters::friction));
        return friction.isPresent() ? OptionalDouble.of(friction.get()) : OptionalDouble.empty();
    }

    /** A rig without limiters. */
    public RigSetup(
            RigKind kind,
            Vector3 focus,
            Force stiffness,
            int strands,
            List<Length> slack,
            Optional<Sliding> sliding,
            Optional<Force> strandStrength,
            OptionalDouble knotEfficiency) {
        this(
                kind,
                focus,
                stiffness,
                strands,
                slack,
                sliding,
                Optional.empty(),
                strandStrength,
                knotEfficiency,
                StrandTraits.NONE);
    }
}
