package thalweg.place;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import thalweg.fault.InputException;
import thalweg.fault.Sentence;

/**
 * Reads {@code geo:} links. The height and parameters that are not known are passed over, as the standard asks.
 *
 * @see "RFC 5870, 3.3 URI Scheme Syntax"
 */
final class GeoLink {

    private static final String NUMBER = "-?\\d{1,3}(?:\\.\\d{1,17})?";

    private static final Pattern SHAPE = Pattern.compile(
            "geo:(" + NUMBER + "),(" + NUMBER + ")(?:,-?\\d{1,9}(?:\\.\\d{1,17})?)?((?:;[a-z0-9-]+(?:=[^;,\\s]*)?)*)");

    private static final Pattern UNCERTAINTY = Pattern.compile("\\d{1,9}(?:\\.\\d{1,17})?");

    /** Beyond 100 km it is no position. */
    private static final BigDecimal LARGEST_UNCERTAINTY = BigDecimal.valueOf(100_000);

    private GeoLink() {}

    static boolean isOne(String text) {
        return text.toLowerCase(Locale.ROOT).startsWith("geo:");
    }

    static Position parse(String text) {
        Matcher shape = SHAPE.matcher(text.toLowerCase(Locale.ROOT));
        if (!shape.matches()) {
            throw unreadable(text, Sentence.of("write it as geo:42.123456,-0.054321"));
        }
        Optional<Integer> accuracy = Optional.empty();
        for (String parameter : shape.group(3).split(";", -1)) {
            if (parameter.startsWith("crs=") && !parameter.equals("crs=wgs84")) {
                throw unreadable(text, Sentence.of("only the reference system wgs84 is known"));
            }
            if (parameter.startsWith("u=")) {
                accuracy = uncertainty(text, parameter.substring(2));
            }
        }
        return PositionText.onGlobe(
                text, PositionText.number(shape.group(1)), PositionText.number(shape.group(2)), accuracy);
    }

    /** Rounded up, so that nothing is claimed that was not stated; a 0 says nothing about a place in the field. */
    private static Optional<Integer> uncertainty(String text, String digits) {
        if (!UNCERTAINTY.matcher(digits).matches()) {
            throw unreadable(text, Sentence.of("its uncertainty u should be a number of metres"));
        }
        BigDecimal metres = new BigDecimal(digits);
        if (metres.compareTo(LARGEST_UNCERTAINTY) > 0) {
            throw unreadable(text, Sentence.of("an uncertainty above 100,000 m tells no place"));
        }
        return metres.signum() == 0
                ? Optional.empty()
                : Optional.of(metres.setScale(0, RoundingMode.CEILING).intValueExact());
    }

    private static InputException unreadable(String text, Sentence mend) {
        return new InputException(Sentence.of("The link \"{0}\" cannot be read; {1}.", text, mend));
    }
}
