package thalweg.place;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import thalweg.fault.InputException;
import thalweg.fault.Sentence;
import thalweg.units.Length;

/** Reads coordinates: decimal degrees, degrees and minutes with or without seconds, and {@code geo:} links. */
public final class PositionText {

    private static final String WITH_POINT = "([+-]?\\d{1,3}(?:\\.\\d{1,17})?)°?";
    private static final String WITH_COMMA = "([+-]?\\d{1,3},\\d{1,17})°?";
    private static final String WITH_COMMA_OR_WHOLE = "([+-]?\\d{1,3}(?:,\\d{1,17})?)°?";

    private static final Pattern POINTS = Pattern.compile(WITH_POINT + "\\s*[,;\\s]\\s*" + WITH_POINT);

    /** Decimal commas leave a semicolon, a space, or a comma with a space after it to part the two numbers. */
    private static final Pattern COMMAS = Pattern.compile(WITH_COMMA + ",?\\s+" + WITH_COMMA);

    private static final Pattern COMMAS_AND_SEMICOLON =
            Pattern.compile(WITH_COMMA_OR_WHOLE + "\\s*;\\s*" + WITH_COMMA_OR_WHOLE);

    /** "42,123" may be one number, "42,123,0,054" two or four. */
    private static final Pattern AMBIGUOUS = Pattern.compile("[+-]?\\d+(?:,\\d+)+");

    /** What stands before it is the place; it says how far off that may be. */
    private static final Pattern WITHIN = Pattern.compile("(.*\\S)\\s*(?:±|\\+/-)\\s*(\\S.*)");

    /** Beyond 100 km it is no position. */
    private static final long MOST_METRES = 100_000;

    private static final int LONGEST = 100;

    private PositionText() {}

    /**
     * The position, without an accuracy unless the text states one.
     *
     * <p>A decimal comma is understood where it cannot be taken for the comma between the two numbers. How far off the
     * place may be stands behind it: "± 10 m", "+/- 30 ft".
     *
     * @throws InputException when it cannot be read or is not on the globe, with what would do
     */
    public static Position parse(String text) {
        String whole = plain(text);
        Matcher within = WITHIN.matcher(whole);
        if (!within.matches() || whole.length() > LONGEST) {
            return place(whole);
        }
        long metres = (long) Math.ceil(Length.parse(within.group(2)).metres());
        if (metres < 1 || metres > MOST_METRES) {
            throw new InputException(Sentence.of(
                    "The accuracy \"{0}\" is not between 1 and {1} m; leave it out where it is not known.",
                    within.group(2), MOST_METRES));
        }
        Position place = place(within.group(1));
        return new Position(place.latE7(), place.lonE7(), Optional.of((int) metres));
    }

    private static Position place(String plain) {
        if (plain.length() > LONGEST) {
            throw unreadable(plain.substring(0, 20) + "...");
        }
        if (GeoLink.isOne(plain)) {
            return GeoLink.parse(plain);
        }
        if (AMBIGUOUS.matcher(plain).matches()) {
            throw new InputException(Sentence.of(
                    "The coordinates \"{0}\" can be read in more than one way; write decimals with a point, as"
                            + " 42.123456, -0.054321, or part the two numbers with a semicolon.",
                    plain));
        }
        for (Pattern pattern : new Pattern[] {POINTS, COMMAS, COMMAS_AND_SEMICOLON}) {
            Matcher decimal = pattern.matcher(plain);
            if (decimal.matches()) {
                return onGlobe(plain, number(decimal.group(1)), number(decimal.group(2)), Optional.empty());
            }
        }
        return Sexagesimal.parse(plain).orElseThrow(() -> unreadable(plain));
    }

    /** With the plain signs in place of those that word processors and web pages put. */
    private static String plain(String text) {
        return text.replaceAll("[\\u00A0\\u2009\\u202F]", " ")
                .replaceAll("[\\u2019\\u2032]", "'")
                .replaceAll("[\\u201D\\u2033]|''", "\"")
                .replace('\u00BA', '°')
                .replace('\u2212', '-')
                .strip();
    }

    /** Degrees with a decimal point or comma. */
    static BigDecimal number(String digits) {
        return new BigDecimal(digits.replace(',', '.'));
    }

    /**
     * The position, if there is such a place.
     *
     * @param text as typed, for the sentence
     * @throws InputException when it is not on the globe
     */
    static Position onGlobe(String text, BigDecimal lat, BigDecimal lon, Optional<Integer> accuracy) {
        long latE7 = Position.e7(lat);
        long lonE7 = Position.e7(lon);
        if (lonE7 == 180 * Position.PER_DEGREE) {
            lonE7 = -lonE7;
        }
        if (Math.abs(latE7) > 90 * Position.PER_DEGREE || Math.abs(lonE7) > 180 * Position.PER_DEGREE) {
            throw new InputException(Sentence.of(
                    "The coordinates \"{0}\" are not on the globe: latitude comes first, -90 to 90, then"
                            + " longitude, -180 to 180.",
                    text));
        }
        return new Position(latE7, lonE7, accuracy);
    }

    private static InputException unreadable(String text) {
        return new InputException(Sentence.of(
                "The coordinates \"{0}\" cannot be read; write them as 42.123456, -0.054321 or 42 07.407 N,"
                        + " 0 03.259 W.",
                text));
    }

    /** In upper case, whatever the machine's language. */
    static String upper(String text) {
        return text.toUpperCase(Locale.ROOT);
    }
}
