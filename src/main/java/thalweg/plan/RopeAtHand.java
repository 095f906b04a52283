package thalweg.plan;

import java.util.OptionalDouble;
import thalweg.units.Length;

/**
 * A rope that could be carried.
 *
 * @param length above 0
 * @param kind such as "9.5 mm low-stretch"; empty text where unknown
 * @param gramsPerMetre its weight, above 0 [g/m]; empty where unknown
 */
public record RopeAtHand(Length length, String kind, OptionalDouble gramsPerMetre) {

    public RopeAtHand {
        if (length.metres() <= 0 || (gramsPerMetre.isPresent() && !(gramsPerMetre.getAsDouble() > 0))) {
            throw new IllegalArgumentException("a rope has a length, and a known weight is above 0");
        }
    }

    /** What it weighs [kg]; empty where unknown. */
    public OptionalDouble kilograms() {
        return gramsPerMetre.isPresent()
                ? OptionalDouble.of(length.metres() * gramsPerMetre.getAsDouble() / 1000)
                : OptionalDouble.empty();
    }
}
