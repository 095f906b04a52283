package thalweg.rig;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What is known of how far textile has suffered.
 *
 * @param condition as it was found; empty where nobody stated it
 * @param fibre that it is spun of; empty where unknown
 * @param ageYears how old it is, 0 or more [years]; empty where unknown
 * @param kept where it has been since; empty where unknown
 */
public record Textile(
        Optional<PartCondition> condition, Optional<Fibre> fibre, OptionalDouble ageYears, Optional<Kept> kept) {

    /** Nothing is known. */
    public static final Textile UNKNOWN =
            new Textile(Optional.empty(), Optional.empty(), OptionalDouble.empty(), Optional.empty());
}
