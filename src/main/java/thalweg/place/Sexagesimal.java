package thalweg.place;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import thalweg.fault.InputException;
import thalweg.fault.Sentence;

/**
 * Reads degrees, minutes and seconds with letters for the directions, before or after the numbers: "42° 07.407' N, 0°
 * 03.259' W", "N 42 07 24.4 W 0 03 15.6", "42d07m24s N 0d03m15s W".
 */
final class Sexagesimal {

    private static final Pattern LETTERS_AFTER = Pattern.compile("([^NSEWO]+)([NSEWO])[\\s,;]*([^NSEWO]+)([NSEWO])");

    private static final Pattern LETTERS_BEFORE = Pattern.compile("([NSEWO])([^NSEWO]+?)[\\s,;]*([NSEWO])([^NSEWO]+)");

    /** An s is taken for seconds only where no reading as south is left: with d and m, and before a letter or the end. */
    private static final Pattern WORD_MARKS =
            Pattern.compile("(\\d)\\s*D\\s*(\\d[\\d.,]*)\\s*M\\s*(?:(\\d[\\d.,]*)\\s*S)?(?=\\s*(?:[NSEWO]|$))");

    private static final String DECIMALS = "(?:[.,]\\d{1,17})?";
    private static final String DEGREES = "(\\d{1,3})(?:\\s*°\\s*|\\s+)";

    /** Decimals belong to the last number only. Each has one group a number. */
    private static final List<Pattern> NOTATIONS = List.of(
            Pattern.compile("(\\d{1,3}" + DECIMALS + ")\\s*°?"),
            Pattern.compile(DEGREES + "(\\d{1,2}" + DECIMALS + ")\\s*'?"),
            Pattern.compile(DEGREES + "(\\d{1,2})(?:\\s*'\\s*|\\s+)(\\d{1,2}" + DECIMALS + ")\\s*\"?"));

    private static final BigDecimal SIXTY = BigDecimal.valueOf(60);

    private Sexagesimal() {}

    /** The position; empty where the text is in no such notation. */
    static Optional<Position> parse(String text) {
        String marked = marked(PositionText.upper(text));
        Matcher after = LETTERS_AFTER.matcher(marked);
        if (after.matches()) {
            return position(text, after.group(1), after.group(2), after.group(3), after.group(4));
        }
        Matcher before = LETTERS_BEFORE.matcher(marked);
        return before.matches()
                ? position(text, before.group(2), before.group(1), before.group(4), before.group(3))
                : Optional.empty();
    }

    private static String marked(String text) {
        return WORD_MARKS
                .matcher(text)
                .replaceAll(found -> found.group(1) + "°" + found.group(2) + "'"
                        + (found.group(3) == null ? "" : found.group(3) + "\""));
    }

    private static Optional<Position> position(
            String text, String one, String oneLetter, String other, String otherLetter) {
        if (oneLetter.equals("O") || otherLetter.equals("O")) {
            throw new InputException(Sentence.of(
                    "In the coordinates \"{0}\" the letter O means east in one language and west in another;"
                            + " write E or W.",
                    text));
        }
        boolean latitudeFirst = "NS".contains(oneLetter);
        if (latitudeFirst == "NS".contains(otherLetter)) {
            return Optional.empty();
        }
        Optional<BigDecimal> first = degrees(text, one.strip(), oneLetter);
        Optional<BigDecimal> second = degrees(text, other.strip(), otherLetter);
        if (first.isEmpty() || second.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(
                latitudeFirst
                        ? PositionText.onGlobe(text, first.get(), second.get(), Optional.empty())
                        : PositionText.onGlobe(text, second.get(), first.get(), Optional.empty()));
    }

    private static Optional<BigDecimal> degrees(String text, String numbers, String letter) {
        for (Pattern notation : NOTATIONS) {
            Matcher match = notation.matcher(numbers);
            if (match.matches()) {
                BigDecimal degrees = degrees(text, match);
                return Optional.of("SW".contains(letter) ? degrees.negate() : degrees);
            }
        }
        return Optional.empty();
    }

    private static BigDecimal degrees(String text, Matcher match) {
        BigDecimal sum = BigDecimal.ZERO;
        for (int part = match.groupCount(); part > 1; part--) {
            BigDecimal number = PositionText.number(match.group(part));
            if (number.compareTo(SIXTY) >= 0) {
                throw new InputException(
                        Sentence.of("The coordinates \"{0}\" have 60 or more minutes or seconds.", text));
            }
            sum = sum.add(number).divide(SIXTY, 15, RoundingMode.HALF_EVEN);
        }
        return sum.add(PositionText.number(match.group(1)));
    }
}
