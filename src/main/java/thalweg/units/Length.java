package thalweg.units;

import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import thalweg.fault.InputException;
import thalweg.fault.Sentence;

/**
 * A length, height or distance.
 *
 * @param metres [m], finite
 */
public record Length(double metres) implements Comparable<Length> {

    /** Metres in a foot, exact. Source: NIST SP 811, appendix B.8. */
    public static final double METRES_PER_FOOT = 0.3048;

    private static final double METRES_PER_INCH = METRES_PER_FOOT / 12;

    private static final Map<String, Double> UNITS = Map.ofEntries(
            Map.entry("", 1.0),
            Map.entry("m", 1.0),
            Map.entry("cm", 0.01),
            Map.entry("mm", 0.001),
            Map.entry("km", 1000.0),
            Map.entry("ft", METRES_PER_FOOT),
            Map.entry("'", METRES_PER_FOOT),
            Map.entry("in", METRES_PER_INCH),
            Map.entry("\"", METRES_PER_INCH));

    private static final Pattern FEET_AND_INCHES =
            Pattern.compile("(\\d{1,9})\\s*(?:ft|')\\s*(\\d+(?:[.,]\\d+)?)\\s*(?:in|\")", Pattern.CASE_INSENSITIVE);

    public Length {
        if (!Double.isFinite(metres)) {
            throw new IllegalArgumentException("a length is finite");
        }
    }

    /**
     * @param centimetres [cm]
     */
    public static Length centimetres(long centimetres) {
        return new Length(centimetres / 100.0);
    }

    /**
     * Reads "18.3 m", "60 ft", "5 ft 6 in" or "25 mm"; a bare number is metres.
     *
     * @throws InputException when it cannot be read
     */
    public static Length parse(String text) {
        Matcher both = FEET_AND_INCHES.matcher(QuantityText.plain(text));
        if (both.matches()) {
            double inches = QuantityText.read(both.group(2) + " in", "length", UNITS);
            if (inches >= METRES_PER_FOOT) {
                throw new InputException(
                        Sentence.of("The length \"{0}\" has 12 or more inches beside its feet.", both.group()));
            }
            return new Length(QuantityText.read(both.group(1) + " ft", "length", UNITS) + inches);
        }
        return new Length(QuantityText.read(text, "length", UNITS));
    }

    /** The same in whole centimetres, rounded half away from zero. */
    public long inCentimetres() {
        return Math.round(Math.abs(metres) * 100) * (metres < 0 ? -1 : 1);
    }

    /** As shown to a person, to the decimetre or half foot or so: "18.3 m", "60 ft". */
    public String print(UnitSystem system) {
        return switch (system) {
            case METRIC -> trimmed(QuantityText.write(metres, 1)) + " m";
            case IMPERIAL -> QuantityText.write(metres / METRES_PER_FOOT, 0) + " ft";
        };
    }

    /** As shown where hand-widths matter, such as the place of a point: "0.35 m", "1.1 ft". */
    public String printFine(UnitSystem system) {
        return switch (system) {
            case METRIC -> QuantityText.write(metres, 2) + " m";
            case IMPERIAL -> QuantityText.write(metres / METRES_PER_FOOT, 1) + " ft";
        };
    }

    private static String trimmed(String number) {
        return number.endsWith(".0") ? number.substring(0, number.length() - 2) : number;
    }

    @Override
    public int compareTo(Length other) {
        return Double.compare(metres, other.metres);
    }
}
