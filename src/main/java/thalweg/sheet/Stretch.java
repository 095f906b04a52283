package thalweg.sheet;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import thalweg.fault.InputException;
import thalweg.fault.Sentence;

/**
 * A part of a line by the numbers of its places.
 *
 * @param from the first, 1 or more
 * @param to the last, not before the first
 */
public record Stretch(int from, int to) {

    private static final Pattern SHAPE = Pattern.compile("(\\d{1,5})(?:\\s*(?:\\.\\.|-|\\u2013)\\s*(\\d{1,5}))?");

    public Stretch {
        if (from < 1 || to < from) {
            throw new IllegalArgumentException("a part of a line goes down it, from place 1 on");
        }
    }

    /**
     * The part of a line as people type it: "3..7", "3-7", "3".
     *
     * @throws InputException when it is none, with what would do
     */
    public static Stretch parse(String text) {
        Matcher shape = SHAPE.matcher(text.strip());
        if (!shape.matches()) {
            throw new InputException(Sentence.of(
                    "The part \"{0}\" cannot be read; write the numbers of its first and last place, as 3..7.",
                    text.strip()));
        }
        int first = Integer.parseInt(shape.group(1));
        int last = shape.group(2) == null ? first : Integer.parseInt(shape.group(2));
        if (first < 1 || last < first) {
            throw new InputException(Sentence.of(
                    "The part \"{0}\" does not go down the line; places are numbered from 1, the first one first, as"
                            + " 3..7.",
                    text.strip()));
        }
        return new Stretch(first, last);
    }

    /** "3..7". */
    public String print() {
        return from + ".." + to;
    }

    /** Whether a place of that number is in it. */
    public boolean holds(int number) {
        return number >= from && number <= to;
    }
}
