package thalweg.fault;

import java.util.List;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * A sentence that can be said in several languages by those who know none of them: its English pattern is what it is
 * looked up by, and what is said where a language does not have it.
 *
 * @param pattern in English, whose gaps are {0} to {9}; any other brace stands for itself
 * @param values for the gaps: texts that are the same in every language, or sentences
 */
public record Sentence(String pattern, List<Object> values) {

    private static final Pattern GAP = Pattern.compile("\\{([0-9])}");

    /** Says nothing. */
    public static final Sentence NONE = new Sentence("", List.of());

    public Sentence {
        values = List.copyOf(values);
        int most = GAP.matcher(pattern)
                .results()
                .mapToInt(gap -> gap.group(1).charAt(0) - '0')
                .max()
                .orElse(-1);
        if (most >= values.size()) {
            throw new IllegalArgumentException("\"" + pattern + "\" is not given its value {" + most + "}");
        }
    }

    /**
     * A sentence or a part of one.
     *
     * @param pattern a literal, so that it can be found and translated
     * @param values sentences stay what they are; anything else is a text now, as its {@code toString} prints it
     */
    public static Sentence of(String pattern, Object... values) {
        return new Sentence(
                pattern,
                Stream.of(values)
                        .map(value -> value instanceof Sentence ? value : value.toString())
                        .toList());
    }

    /** What is not translated: a name, a key, a cause that the system states. */
    public static Sentence plain(String text) {
        return of("{0}", text);
    }

    /** A word of a list of the program, such as "canyon", that is looked up like any other pattern. */
    public static Sentence word(String english) {
        return new Sentence(english, List.of());
    }

    /**
     * What cannot be used and every reason why: one goes on in the line, several stand on lines of their own.
     *
     * @param head ends in a colon
     */
    public static Sentence reasons(Sentence head, List<Sentence> reasons) {
        return reasons.size() == 1
                ? of("{0} {1}", head, reasons.get(0))
                : of("{0} {1} things are wrong:\n  {2}", head, reasons.size(), joined("\n  ", reasons));
    }

    /**
     * Several in a row.
     *
     * @param between stands between two, without letters
     */
    public static Sentence joined(String between, List<Sentence> parts) {
        return parts.stream()
                .reduce((before, after) -> new Sentence("{0}" + between + "{1}", List.of(before, after)))
                .orElse(plain(""));
    }

    /**
     * In another language.
     *
     * @param translation of a pattern; of one that it does not know the pattern itself
     */
    public String said(UnaryOperator<String> translation) {
        Matcher gap = GAP.matcher(translation.apply(pattern));
        StringBuilder out = new StringBuilder();
        while (gap.find()) {
            Object value = values.get(gap.group(1).charAt(0) - '0');
            String said = value instanceof Sentence inner ? inner.said(translation) : value.toString();
            gap.appendReplacement(out, Matcher.quoteReplacement(said));
        }
        return gap.appendTail(out).toString();
    }

    /** In English. */
    @Override
    public String toString() {
        return said(UnaryOperator.identity());
    }
}
