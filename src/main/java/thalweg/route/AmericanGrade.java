package thalweg.route;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import thalweg.fault.InputException;
import thalweg.fault.Sentence;

/**
 * A grade in the American notation, "3 B III R".
 *
 * @param technical 1 (walking) to 4 (complex rope work)
 * @param water what water to expect
 * @param time I to VI as 1 to 6; empty where it is not stated
 * @param risk R or X; empty where neither is stated
 */
public record AmericanGrade(int technical, Water water, Optional<Integer> time, Optional<Risk> risk) {

    private static final Pattern SHAPE =
            Pattern.compile("([1-4])\\s*(A|B|C[1-4]?)(?:\\s+(I{1,3}|IV|VI?))?(?:\\s+([RX]))?");

    /** From dry to strong current. */
    public enum Water {
        A,
        B,
        C,
        C1,
        C2,
        C3,
        C4
    }

    /** Risk beyond what the class says. */
    public enum Risk {
        R,
        X
    }

    public AmericanGrade {
        if (technical < 1
                || technical > 4
                || time.filter(level -> level < 1 || level > 6).isPresent()) {
            throw new IllegalArgumentException("the class is 1 to 4 and the time I to VI");
        }
    }

    /**
     * Reads "3 B III R", "3B III" or "2 A".
     *
     * @throws InputException when it is no such grade
     */
    public static AmericanGrade parse(String text) {
        Matcher shape = SHAPE.matcher(text.strip().toUpperCase(Locale.ROOT));
        if (!shape.matches()) {
            throw new InputException(Sentence.of(
                    "The American grade \"{0}\" cannot be read; write it as 3 B III R: class 1 to 4, water A,"
                            + " B, C or C1 to C4, time I to VI, risk R or X.",
                    text.strip()));
        }
        return new AmericanGrade(
                Integer.parseInt(shape.group(1)),
                Water.valueOf(shape.group(2)),
                Optional.ofNullable(shape.group(3)).flatMap(Roman::read),
                Optional.ofNullable(shape.group(4)).map(Risk::valueOf));
    }

    /** In its notation. */
    public String print() {
        return technical + " " + water
                + time.map(level -> " " + Roman.write(level)).orElse("")
                + risk.map(level -> " " + level).orElse("");
    }
}
