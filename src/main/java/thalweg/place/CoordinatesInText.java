package thalweg.place;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Finds coordinates that somebody wrote into running text. What it does not know stays: a text can tell a place in more
 * ways than any program reads, so that whoever relies on this says so.
 */
public final class CoordinatesInText {

    private static final String SPACE = "[ \\u00A0\\u2009\\u202F]";
    private static final String LETTER = "[NSEWOnsewo]";

    /** Three decimals tell a place to 110 m; fewer are left, because "2.5, 3.5" may be anything. */
    private static final String DECIMAL = "[+\\u2212-]?\\d{1,3}[.,]\\d{3,17}(?:" + SPACE + "?°)?";

    private static final String MINUTE_MARK = "['\\u2019\\u2032]";
    private static final String SECOND_MARK = "(?:[\"\\u201D\\u2033]|''|\\u2032\\u2032)";
    private static final String NUMBER = "\\d{1,2}(?:[.,]\\d{1,17})?";

    private static final String BARE = "\\d{1,3}[ °]" + SPACE + "?\\d{1,2}[.,]\\d{1,17}'?";

    private static final List<Pattern> NOTATIONS = List.of(
            Pattern.compile("(?i)\\bgeo:-?\\d[^\\s<>)\\]]*"),
            // Decimal degrees in a pair, a letter before or after either.
            Pattern.compile("(?<![\\d.,])(?:" + LETTER + SPACE + "?)?" + DECIMAL + SPACE + "?(?:" + LETTER
                    + "\\b)?\\s*[,;/\\s]\\s*" + "(?:" + LETTER + SPACE + "?)?" + DECIMAL + "(?:" + SPACE + "?" + LETTER
                    + "\\b)?(?!\\d)"),
            // One of the two by itself, where a sign or a word tells that it is one.
            Pattern.compile("(?<![\\d.,])" + "[+\\u2212-]?\\d{1,3}[.,]\\d{3,17}" + SPACE + "?°" + SPACE + "?(?:"
                    + LETTER + "\\b)?"),
            Pattern.compile("(?i)\\b(?:lat|lon|lng|long)(?:itude)?\\b" + SPACE + "?[=:]?" + SPACE
                    + "?[+\\u2212-]?\\d{1,3}[.,]\\d{1,17}°?"),
            // Degrees and minutes, with marks.
            Pattern.compile("(?:\\b" + LETTER + SPACE + "?)?\\b\\d{1,3}" + SPACE + "?(?:°|\\u00BA|deg|d)" + SPACE + "?"
                    + NUMBER + SPACE
                    + "?(?:" + MINUTE_MARK + "|m(?![a-z]))(?:" + SPACE + "?" + NUMBER + SPACE + "?(?:" + SECOND_MARK
                    + "|s(?![a-z])))?(?:" + SPACE + "?" + LETTER + "\\b)?"),
            // The same without marks, where letters tell that it is one; pairs before what may be half of one.
            Pattern.compile("\\b" + BARE + SPACE + "?" + LETTER + "\\b[,;\\s]+" + BARE + SPACE + "?" + LETTER + "\\b"),
            Pattern.compile("\\b" + LETTER + SPACE + "?" + BARE + "\\b"),
            Pattern.compile("\\b" + BARE + SPACE + "?" + LETTER + "\\b"),
            // Grids: zone and band, easting, northing; or the letters of a square and its digits.
            Pattern.compile("\\b\\d{1,2}" + SPACE + "?[C-HJ-NP-Xc-hj-np-x]" + SPACE + "+(?:E" + SPACE
                    + "?)?\\d{6}(?:[.,]\\d+)?(?:" + SPACE + "?m?E)?[,;\\s]+(?:N" + SPACE
                    + "?)?\\d{6,8}(?:[.,]\\d+)?(?:" + SPACE + "?m?N)?\\b"),
            Pattern.compile("\\b\\d{1,2}[C-HJ-NP-X]" + SPACE + "?[A-HJ-NP-Z]{2}" + SPACE + "?\\d{2,5}" + SPACE
                    + "?\\d{2,5}\\b"));

    private CoordinatesInText() {}

    /** The text with those words in the place of each position that was recognised. */
    public static String replaced(String text, String instead) {
        String without = text;
        for (Pattern notation : NOTATIONS) {
            without = notation.matcher(without).replaceAll(Matcher.quoteReplacement(instead));
        }
        return without;
    }
}
