package thalweg.rig;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What else is known of the strands and the master.
 *
 * @param condition how the strands were found; empty where nobody stated it
 * @param knot that weakens them most; empty where a share was stated, or nothing
 * @param fibre that they are spun of; empty where unknown
 * @param ageYears how old they are, 0 or more [years]; empty where unknown
 * @param kept where they have been since; empty where unknown
 * @param connector at the master; empty where nobody stated it
 * @param derating shares that somebody states in place of the program's
 */
public record StrandTraits(
        Optional<PartCondition> condition,
        Optional<Knot> knot,
        Optional<Fibre> fibre,
        OptionalDouble ageYears,
        Optional<Kept> kept,
        Optional<Connector> connector,
        Derating derating) {

    /** Nothing else is known. */
    public static final StrandTraits NONE = new StrandTraits(
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            OptionalDouble.empty(),
            Optional.empty(),
            Optional.empty(),
            Derating.NONE);

    public StrandTraits {
        if (condition.equals(Optional.of(PartCondition.GONE))) {
            throw new IllegalArgumentException("strands that are gone are in no rig");
        }
        if (ageYears.isPresent() && !(ageYears.getAsDouble() >= 0)) {
            throw new IllegalArgumentException("an age is 0 or more");
        }
    }

    /** How far the strands have suffered. */
    Textile textile() {
        return new Textile(condition, fibre, ageYears, kept);
    }
}
