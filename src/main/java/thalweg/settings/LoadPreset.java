package thalweg.settings;

import java.util.Optional;
import java.util.OptionalDouble;
import thalweg.units.Force;
import thalweg.units.Mass;

/**
 * A load as people have it, offered by name wherever one is asked for.
 *
 * @param name by which it is chosen, not blank
 * @param mass that hangs; this or the force
 * @param force that pulls; this or the mass
 * @param factor by which the pull is larger than at rest [-], {@value #LEAST_FACTOR} to {@value #MOST_FACTOR}
 * @param source where its figures are from, not blank
 */
public record LoadPreset(String name, Optional<Mass> mass, Optional<Force> force, double factor, String source) {

    /** A load that moves never pulls less than one at rest does, over time. */
    public static final double LEAST_FACTOR = 1;

    /** Beyond it a fall is meant, and the rope decides; our choice. */
    public static final double MOST_FACTOR = 10;

    public LoadPreset {
        if (name.isBlank() || source.isBlank()) {
            throw new IllegalArgumentException("a load preset has a name and a source");
        }
        if (mass.isPresent() == force.isPresent()) {
            throw new IllegalArgumentException("a load preset is a mass or a force");
        }
        if (!(factor >= LEAST_FACTOR && factor <= MOST_FACTOR)) {
            throw new IllegalArgumentException("a load factor is 1 to 10");
        }
    }

    /** Whether that is stated of a load: the same mass or force, to a gram or a newton, and the same factor. */
    public boolean is(OptionalDouble kilograms, OptionalDouble kilonewtons, double otherFactor) {
        return same(mass.map(Mass::kilograms), kilograms)
                && same(force.map(Force::inKilonewtons), kilonewtons)
                && near(factor, otherFactor);
    }

    private static boolean same(Optional<Double> own, OptionalDouble other) {
        return own.isPresent() == other.isPresent() && (own.isEmpty() || near(own.get(), other.orElseThrow()));
    }

    private static boolean near(double one, double other) {
        return Math.abs(one - other) < 1e-3;
    }
}
