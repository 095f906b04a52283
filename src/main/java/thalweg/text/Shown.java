package thalweg.text;

/**
 * The last look at a text before a terminal paints it: what must not be there is seen as {@code �} instead of acting.
 *
 * <p>For a single line: line feeds and tabs are controls too, break the text into lines before.
 */
public final class Shown {

    private static final char REPLACEMENT = '\uFFFD';

    private Shown() {}

    /**
     * The text with one {@code �} for every control, sign that hides or turns text around and half of a surrogate pair,
     * and one for all combining marks past {@value Unwanted#MOST_MARKS} in a row.
     */
    public static String safe(String text) {
        if (Width.isPlain(text) && text.indexOf(Width.SOFT_HYPHEN) < 0) {
            return text;
        }
        StringBuilder out = new StringBuilder(text.length());
        int marks = 0;
        for (int i = 0; i < text.length(); i += Character.charCount(text.codePointAt(i))) {
            int codePoint = text.codePointAt(i);
            boolean mark = Unwanted.isMark(codePoint);
            marks = mark ? marks + 1 : Unwanted.isJoiner(codePoint) ? marks : 0;
            if (Unwanted.is(codePoint) || (mark && marks == Unwanted.MOST_MARKS + 1)) {
                out.append(REPLACEMENT);
            } else if (!(mark && marks > Unwanted.MOST_MARKS)) {
                out.appendCodePoint(codePoint);
            }
        }
        return out.toString();
    }
}
