package thalweg.units;

import java.util.Map;

/**
 * An angle.
 *
 * @param degrees [°], finite
 */
public record Angle(double degrees) implements Comparable<Angle> {

    private static final Map<String, Double> UNITS = Map.of("", 1.0, "°", 1.0, "deg", 1.0);

    public Angle {
        if (!Double.isFinite(degrees)) {
            throw new IllegalArgumentException("an angle is finite");
        }
    }

    /**
     * Reads "15", "15°" or "15 deg".
     *
     * @throws thalweg.fault.InputException when it cannot be read
     */
    public static Angle parse(String text) {
        return new Angle(QuantityText.read(text, "angle", UNITS));
    }

    /** The same in [rad]. */
    public double inRadians() {
        return Math.toRadians(degrees);
    }

    /** As shown to a person, to the degree: "51°". */
    public String print() {
        return QuantityText.write(degrees, 0) + "°";
    }

    /** As shown where a limit is near: "60.3°". */
    public String printFine() {
        return QuantityText.write(degrees, 1) + "°";
    }

    @Override
    public int compareTo(Angle other) {
        return Double.compare(degrees, other.degrees);
    }
}
