package thalweg.route;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import thalweg.fault.InputException;
import thalweg.fault.Sentence;

/**
 * A grade in the French notation, "v4 a3 III".
 *
 * @param vertical difficulty of the drops, 1 to 7
 * @param aquatic difficulty of the water, 1 to 7
 * @param commitment length and way out, I to VI as 1 to 6; empty where it is not stated
 */
public record FrenchGrade(int vertical, int aquatic, Optional<Integer> commitment) {

    private static final Pattern SHAPE = Pattern.compile("[vV]\\s*([1-7])\\s*[aA]\\s*([1-7])(?:\\s*([IViv]{1,3}))?");

    public FrenchGrade {
        if (vertical < 1 || vertical > 7 || aquatic < 1 || aquatic > 7) {
            throw new IllegalArgumentException("v and a are 1 to 7");
        }
        if (commitment.filter(level -> level < 1 || level > 6).isPresent()) {
            throw new IllegalArgumentException("commitment is I to VI");
        }
    }

    /**
     * Reads "v4 a3 III" or "v4 a3".
     *
     * @throws InputException when it is no such grade
     */
    public static FrenchGrade parse(String text) {
        Matcher shape = SHAPE.matcher(text.strip());
        if (shape.matches()) {
            Optional<Integer> commitment = Optional.ofNullable(shape.group(3)).flatMap(Roman::read);
            if (shape.group(3) == null || commitment.isPresent()) {
                return new FrenchGrade(Integer.parseInt(shape.group(1)), Integer.parseInt(shape.group(2)), commitment);
            }
        }
        throw new InputException(Sentence.of(
                "The French grade \"{0}\" cannot be read; write it as v4 a3 III, with v and a from 1 to 7"
                        + " and I to VI.",
                text.strip()));
    }

    /** In its notation. */
    public String print() {
        return "v" + vertical + " a" + aquatic
                + commitment.map(level -> " " + Roman.write(level)).orElse("");
    }
}
