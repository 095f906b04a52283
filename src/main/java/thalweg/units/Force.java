package thalweg.units;

import java.util.Map;

/**
 * A force.
 *
 * @param newtons [N], finite
 */
public record Force(double newtons) implements Comparable<Force> {

    /** Newtons in a pound-force, exact. Source: NIST SP 811, appendix B.8. */
    public static final double NEWTONS_PER_POUND_FORCE = 4.4482216152605;

    private static final Map<String, Double> UNITS =
            Map.of("n", 1.0, "kn", 1000.0, "", 1000.0, "lbf", NEWTONS_PER_POUND_FORCE, "lb", NEWTONS_PER_POUND_FORCE);

    public Force {
        if (!Double.isFinite(newtons)) {
            throw new IllegalArgumentException("a force is finite");
        }
    }

    /**
     * @param kilonewtons [kN], finite
     */
    public static Force kilonewtons(double kilonewtons) {
        return new Force(kilonewtons * 1000);
    }

    /**
     * Reads "12 kN", "900 N" or "4000 lbf"; a bare number is kN.
     *
     * @throws thalweg.fault.InputException when it cannot be read
     */
    public static Force parse(String text) {
        return new Force(QuantityText.read(text, "force", UNITS));
    }

    /** The same in [kN]. */
    public double inKilonewtons() {
        return newtons / 1000;
    }

    /** As shown to a person: "12.0 kN" or "2698 lbf". */
    public String print(UnitSystem system) {
        return switch (system) {
            case METRIC -> QuantityText.write(inKilonewtons(), Math.abs(newtons) < 9_995 ? 2 : 1) + " kN";
            case IMPERIAL -> QuantityText.write(newtons / NEWTONS_PER_POUND_FORCE, 0) + " lbf";
        };
    }

    @Override
    public int compareTo(Force other) {
        return Double.compare(newtons, other.newtons);
    }
}
