package thalweg.units;

import java.util.Map;

/**
 * A mass.
 *
 * @param kilograms [kg], finite
 */
public record Mass(double kilograms) implements Comparable<Mass> {

    /** Kilograms in a pound, exact. Source: NIST SP 811, appendix B.8. */
    public static final double KILOGRAMS_PER_POUND = 0.45359237;

    /** Standard acceleration of free fall [m/s2]. Source: CGPM 1901. */
    public static final double STANDARD_GRAVITY = 9.80665;

    private static final Map<String, Double> UNITS =
            Map.of("", 1.0, "kg", 1.0, "g", 0.001, "lb", KILOGRAMS_PER_POUND, "lbs", KILOGRAMS_PER_POUND);

    public Mass {
        if (!Double.isFinite(kilograms)) {
            throw new IllegalArgumentException("a mass is finite");
        }
    }

    /**
     * Reads "90 kg" or "200 lb"; a bare number is kilograms.
     *
     * @throws thalweg.fault.InputException when it cannot be read
     */
    public static Mass parse(String text) {
        return new Mass(QuantityText.read(text, "mass", UNITS));
    }

    /** Its weight under standard gravity. */
    public Force weight() {
        return new Force(kilograms * STANDARD_GRAVITY);
    }

    /** As shown to a person: "90 kg", "198 lb". */
    public String print(UnitSystem system) {
        return switch (system) {
            case METRIC -> QuantityText.write(kilograms, 0) + " kg";
            case IMPERIAL -> QuantityText.write(kilograms / KILOGRAMS_PER_POUND, 0) + " lb";
        };
    }

    @Override
    public int compareTo(Mass other) {
        return Double.compare(kilograms, other.kilograms);
    }
}
