package thalweg.sheet.html;

import java.text.Bidi;
import org.jspecify.annotations.Nullable;

/**
 * Text in which scripts that run to the left stand among others. A browser takes the direction of a whole text from its
 * first letter, so that an English sentence which begins with an Arabic name would be turned round.
 */
public final class Running {

    private static final int LEFT_TO_RIGHT_MARK = 0x200E;

    private Running() {}

    /**
     * The direction of a text: "rtl" where it begins with a letter that runs to the left and most of its letters do, else
     * "ltr"; null where nothing in it runs to the left, so that nothing need be said.
     */
    public static @Nullable String direction(String text) {
        if (!Bidi.requiresBidi(text.toCharArray(), 0, text.length())) {
            return null;
        }
        int[] letters = text.codePoints().filter(Character::isLetter).toArray();
        long leftwards = text.codePoints().filter(Running::runsLeft).count();
        return letters.length > 0 && runsLeft(letters[0]) && 2 * leftwards > letters.length ? "rtl" : "ltr";
    }

    /**
     * The text with a sign of no width wherever a number follows a name that runs to the left: in a text that runs to the
     * right, the number would be drawn on the other side of the name.
     */
    public static String kept(String text) {
        if (!"ltr".equals(direction(text))) {
            return text;
        }
        StringBuilder out = new StringBuilder(text.length() + 4);
        boolean afterLeftwards = false;
        int[] signs = text.codePoints().toArray();
        for (int i = 0; i < signs.length; i++) {
            boolean digit = Character.getDirectionality(signs[i]) == Character.DIRECTIONALITY_EUROPEAN_NUMBER;
            if (digit && afterLeftwards) {
                out.appendCodePoint(LEFT_TO_RIGHT_MARK);
            }
            out.appendCodePoint(signs[i]);
            if (Character.isLetter(signs[i]) || digit) {
                afterLeftwards = runsLeft(signs[i]);
            }
        }
        return out.toString();
    }

    private static boolean runsLeft(int sign) {
        byte direction = Character.getDirectionality(sign);
        return direction == Character.DIRECTIONALITY_RIGHT_TO_LEFT
                || direction == Character.DIRECTIONALITY_RIGHT_TO_LEFT_ARABIC;
    }
}
