package thalweg.units;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import thalweg.fault.InputException;
import thalweg.fault.Sentence;

/** Reads "18.3 m" or "60 ft" and writes numbers with a fixed number of decimals, whatever the machine's language. */
final class QuantityText {

    private static final int LONGEST = 40;

    private static final Pattern SHAPE =
            Pattern.compile("([+-]?)([0-9]+(?:[.,][0-9]+)?|[.,][0-9]+)\\s*([\\p{L}°'\"]*)");

    /** A comma before exactly three digits is a thousand to one reader and a decimal to another. */
    private static final Pattern AMBIGUOUS = Pattern.compile("[1-9][0-9]{0,2},[0-9]{3}");

    private QuantityText() {}

    /** The text with plain spaces, quotes and minus signs, where a word processor or a web page put others. */
    static String plain(String text) {
        return text.replaceAll("[\\u00A0\\u2009\\u202F]", " ")
                .replaceAll("[\\u2019\\u2032]", "'")
                .replaceAll("[\\u201D\\u2033]", "\"")
                .replace('\u2212', '-')
                .strip();
    }

    /**
     * The number in base units.
     *
     * @param text as typed
     * @param what the noun for the sentence, such as "length"
     * @param units factor to the base unit by lower-case unit name; "" is the unit of a bare number, if there is one
     * @throws InputException when it cannot be read, with what would do
     */
    static double read(String text, String what, Map<String, Double> units) {
        String trimmed = plain(text);
        Matcher shape = SHAPE.matcher(trimmed);
        if (trimmed.length() > LONGEST || !shape.matches()) {
            throw unreadable(trimmed, what, units);
        }
        String digits = shape.group(2);
        if (AMBIGUOUS.matcher(digits).matches()) {
            String unit = trimmed.substring(shape.end(2));
            throw new InputException(Sentence.of(
                    "The {0} \"{1}\" can be read in two ways; write {2}{3}{4} or {2}{5}{4}.",
                    Sentence.word(what),
                    trimmed,
                    shape.group(1),
                    digits.replace(",", ""),
                    unit,
                    digits.replace(',', '.')));
        }
        Double factor = units.get(shape.group(3).toLowerCase(Locale.ROOT));
        if (factor == null) {
            throw unreadable(trimmed, what, units);
        }
        double number = Double.parseDouble(shape.group(1) + digits.replace(',', '.'));
        return number * factor;
    }

    private static InputException unreadable(String text, String what, Map<String, Double> units) {
        String shown = text.length() > LONGEST ? text.substring(0, LONGEST) + "..." : text;
        String known = units.keySet().stream()
                .filter(name -> !name.isEmpty())
                .map(QuantityText::spelled)
                .sorted()
                .reduce((one, other) -> one + ", " + other)
                .orElse("");
        return new InputException(Sentence.of(
                "The {0} \"{1}\" is not a number with a unit; write a number such as 18.3 and one of: {2}.",
                Sentence.word(what), shown, known));
    }

    /** Units are found whatever their case; people are shown the usual one. */
    private static String spelled(String unit) {
        return unit.equals("n") ? "N" : unit.equals("kn") ? "kN" : unit;
    }

    /** The number with that many decimals, a point between, and never a negative zero. */
    static String write(double number, int decimals) {
        BigDecimal rounded = BigDecimal.valueOf(number).setScale(decimals, RoundingMode.HALF_UP);
        return rounded.signum() == 0 ? rounded.abs().toPlainString() : rounded.toPlainString();
    }
}
