package thalweg.text;

import java.text.Normalizer;

/**
 * The door through which text from outside comes in. What went through once comes through unchanged ever after.
 *
 * <p>Text leaves it composed (Unicode form NFC), with line feeds as the only line ends, without controls, without signs
 * that hide or turn text around, with {@value Unwanted#MOST_MARKS} combining marks in a row at most and, where half of a
 * surrogate pair stood, the replacement character.
 */
public final class Clean {

    private static final int REPLACEMENT = 0xFFFD;

    private Clean() {}

    /**
     * One line: white space of any kind and length becomes one space, none at either end.
     *
     * @param longest length to keep [code points], 0 or more; a character of several is kept whole or left out
     */
    public static String line(String text, int longest) {
        StringBuilder out = new StringBuilder(text.length());
        boolean gap = false;
        String kept = composed(withoutUnwanted(text));
        for (int i = 0; i < kept.length(); i += Character.charCount(kept.codePointAt(i))) {
            int codePoint = kept.codePointAt(i);
            if (codePoint == '\n' || Character.isSpaceChar(codePoint)) {
                gap = true;
            } else {
                out.append(gap && out.length() > 0 ? " " : "").appendCodePoint(codePoint);
                gap = false;
            }
        }
        return cut(out.toString(), longest).strip();
    }

    /**
     * Several lines: every line end becomes a line feed and every tab a space; other spaces stay.
     *
     * @param longest length to keep [code points], 0 or more; a character of several is kept whole or left out
     */
    public static String lines(String text, int longest) {
        return cut(composed(withoutUnwanted(text)), longest);
    }

    private static String withoutUnwanted(String text) {
        StringBuilder out = new StringBuilder(text.length());
        String lines = text.replace("\r\n", "\n");
        for (int i = 0; i < lines.length(); i += Character.charCount(lines.codePointAt(i))) {
            int codePoint = lines.codePointAt(i);
            if (isLineEnd(codePoint)) {
                out.append('\n');
            } else if (codePoint == '\t') {
                out.append(' ');
            } else if (Character.getType(codePoint) == Character.SURROGATE) {
                out.appendCodePoint(REPLACEMENT);
            } else if (!Unwanted.is(codePoint)) {
                out.appendCodePoint(codePoint);
            }
        }
        return out.toString();
    }

    /** Source: the newline functions of the Unicode Standard, 5.8: LF, VT, FF, CR, NEL, LS, PS. */
    private static boolean isLineEnd(int codePoint) {
        return (codePoint >= '\n' && codePoint <= '\r')
                || codePoint == 0x85
                || codePoint == 0x2028
                || codePoint == 0x2029;
    }

    /** Composed, and then without marks past the limit and joiners that have nothing before them to join. */
    private static String composed(String text) {
        String composed = Normalizer.normalize(text, Normalizer.Form.NFC);
        StringBuilder out = new StringBuilder(composed.length());
        int marks = 0;
        int before = ' ';
        for (int i = 0; i < composed.length(); i += Character.charCount(composed.codePointAt(i))) {
            int codePoint = composed.codePointAt(i);
            boolean joiner = Unwanted.isJoiner(codePoint);
            boolean mark = Unwanted.isMark(codePoint);
            marks = mark ? marks + 1 : joiner ? marks : 0;
            boolean idle = joiner && (before == '\n' || Character.isSpaceChar(before) || Unwanted.isJoiner(before));
            if (!idle && !(mark && marks > Unwanted.MOST_MARKS)) {
                out.appendCodePoint(codePoint);
                before = codePoint;
            }
        }
        return out.toString();
    }

    private static String cut(String text, int longest) {
        if (text.codePointCount(0, text.length()) <= longest) {
            return text;
        }
        StringBuilder out = new StringBuilder();
        int length = 0;
        for (String cluster : Width.clusters(text)) {
            length += cluster.codePointCount(0, cluster.length());
            if (length > longest) {
                break;
            }
            out.append(cluster);
        }
        return out.toString();
    }
}
