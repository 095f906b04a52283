package thalweg.sheet.html;

/** Writes a text into a style sheet so that nothing in it can end the string, the rule or the element. */
public final class CssText {

    private CssText() {}

    /**
     * The text as a quoted string, everything but plain letters, digits and spaces written as its number.
     *
     * @see "CSS Syntax Module Level 3, 4.3.7 Consume an escaped code point"
     */
    public static String quoted(String text) {
        StringBuilder quoted = new StringBuilder("\"");
        text.codePoints().forEach(point -> {
            if (isPlain(point)) {
                quoted.appendCodePoint(point);
            } else {
                quoted.append('\\').append(Integer.toHexString(point)).append(' ');
            }
        });
        return quoted.append('"').toString();
    }

    private static boolean isPlain(int point) {
        return point == ' '
                || (point >= '0' && point <= '9')
                || (point >= 'A' && point <= 'Z')
                || (point >= 'a' && point <= 'z');
    }
}
