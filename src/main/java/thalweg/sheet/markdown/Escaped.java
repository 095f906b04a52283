package thalweg.sheet.markdown;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Text as Markdown that shows it as it is: nothing in it can become a heading, a list, a link, code, HTML or a column.
 *
 * @see "CommonMark Spec 0.31.2, 2.4 Backslash escapes: any ASCII punctuation may have one"
 * @see "GitHub Flavored Markdown Spec, 4.10 Tables, 6.5 Strikethrough, 6.9 Autolinks"
 */
final class Escaped {

    /** What means something wherever it stands. */
    private static final Pattern ANYWHERE = Pattern.compile("[\\\\`*_\\[\\]<>&|~$@]");

    /** What means something at the beginning of a line. */
    private static final Pattern AT_THE_START = Pattern.compile("^(\\s*)([#+=:-])");

    private static final Pattern NUMBERED = Pattern.compile("^(\\s*\\d{1,9})([.)])");

    /** Addresses that some programs make links of by themselves. */
    private static final Pattern ADDRESS = Pattern.compile("(?i)(www)\\.|(:)//");

    private Escaped() {}

    /** One line, wherever in a line it stands. */
    static String inline(String text) {
        String line = text.replace('\n', ' ');
        String marked = ANYWHERE.matcher(line).replaceAll(found -> "\\\\" + Matcher.quoteReplacement(found.group()));
        return ADDRESS.matcher(marked)
                .replaceAll(found -> found.group(1) != null
                        ? Matcher.quoteReplacement(found.group(1) + "\\.")
                        : Matcher.quoteReplacement("\\://"));
    }

    /** One line at the beginning of a line. */
    static String start(String text) {
        String line = inline(text);
        String sign = AT_THE_START
                .matcher(line)
                .replaceFirst(found -> Matcher.quoteReplacement(found.group(1) + "\\" + found.group(2)));
        // Four spaces would make code of it; spaces before a line mean nothing anyway.
        return NUMBERED.matcher(sign)
                .replaceFirst(found -> Matcher.quoteReplacement(found.group(1) + "\\" + found.group(2)))
                .strip();
    }
}
