package thalweg.plan;

import java.util.Locale;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import thalweg.fault.InputException;
import thalweg.fault.Sentence;
import thalweg.logbook.Trip;
import thalweg.units.Length;

/**
 * A rope that could be carried.
 *
 * @param length above 0
 * @param kind such as "9.5 mm low-stretch"; empty text where unknown
 * @param gramsPerMetre its weight, above 0 [g/m]; empty where unknown
 */
public record RopeAtHand(Length length, String kind, OptionalDouble gramsPerMetre) {

    private static final Pattern WEIGHT = Pattern.compile("[,; ]*(\\d{1,3}(?:[.,]\\d{1,2})?) ?g/m");
    private static final double LEAST_G_PER_M = 10;
    private static final double MOST_G_PER_M = 200;

    public RopeAtHand {
        if (length.metres() <= 0 || (gramsPerMetre.isPresent() && !(gramsPerMetre.getAsDouble() > 0))) {
            throw new IllegalArgumentException("a rope has a length, and a known weight is above 0");
        }
    }

    /**
     * A rope as it is entered with a trip; a weight such as "62 g/m" stands in its kind.
     *
     * @throws InputException when that weight is not believed
     */
    public static RopeAtHand of(Trip.Rope rope) {
        Matcher weight = WEIGHT.matcher(rope.kind().toLowerCase(Locale.ROOT));
        if (!weight.find()) {
            return new RopeAtHand(rope.length(), rope.kind(), OptionalDouble.empty());
        }
        double grams = Double.parseDouble(weight.group(1).replace(',', '.'));
        if (grams < LEAST_G_PER_M || grams > MOST_G_PER_M) {
            throw new InputException(
                    Sentence.of("A rope of {0} g/m is not believed; it is 10 to 200 g/m.", weight.group(1)));
        }
        String kind = rope.kind().substring(0, weight.start()) + rope.kind().substring(weight.end());
        return new RopeAtHand(rope.length(), kind.strip(), OptionalDouble.of(grams));
    }

    /** What it weighs [kg]; empty where unknown. */
    public OptionalDouble kilograms() {
        return gramsPerMetre.isPresent()
                ? OptionalDouble.of(length.metres() * gramsPerMetre.getAsDouble() / 1000)
                : OptionalDouble.empty();
    }
}
