package thalweg.sheet.pdf;

import java.lang.Character.UnicodeScript;
import java.util.EnumSet;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.IntPredicate;

/**
 * Replaces what no font at hand can set by a sign that is seen, and counts it. Letters are set one after the other from
 * left to right: scripts that run to the left or whose letters join would come out as something else than was written.
 */
final class Setting {

    /** An empty box, where a character should stand. */
    static final String STAND_IN = "\u25A1";

    private static final Set<UnicodeScript> LETTER_BY_LETTER = EnumSet.of(
            UnicodeScript.COMMON,
            UnicodeScript.INHERITED,
            UnicodeScript.LATIN,
            UnicodeScript.GREEK,
            UnicodeScript.CYRILLIC,
            UnicodeScript.ARMENIAN,
            UnicodeScript.GEORGIAN,
            UnicodeScript.ETHIOPIC,
            UnicodeScript.HAN,
            UnicodeScript.HIRAGANA,
            UnicodeScript.KATAKANA,
            UnicodeScript.BOPOMOFO,
            UnicodeScript.HANGUL);

    private final IntPredicate inFonts;
    private final SortedMap<Integer, Integer> missing = new TreeMap<>();

    /**
     * @param inFonts whether a font at hand has a code point
     */
    Setting(IntPredicate inFonts) {
        this.inFonts = inFonts;
    }

    /** The text as it can be set. */
    String of(String text) {
        StringBuilder out = new StringBuilder(text.length());
        text.codePoints().filter(point -> !isUnseen(point)).forEach(point -> {
            if (canBeSet(point)) {
                out.appendCodePoint(point);
            } else {
                missing.merge(point, 1, Integer::sum);
                out.append(STAND_IN);
            }
        });
        return out.toString();
    }

    /** How often each code point was replaced, in their order. */
    SortedMap<Integer, Integer> missing() {
        return new TreeMap<>(Map.copyOf(missing));
    }

    private boolean canBeSet(int point) {
        if (Character.isWhitespace(point) || Character.isSpaceChar(point)) {
            return true;
        }
        return inFonts.test(point)
                && LETTER_BY_LETTER.contains(UnicodeScript.of(point))
                && !runsLeft(Character.getDirectionality(point));
    }

    private static boolean runsLeft(byte direction) {
        return direction == Character.DIRECTIONALITY_RIGHT_TO_LEFT
                || direction == Character.DIRECTIONALITY_RIGHT_TO_LEFT_ARABIC;
    }

    /** Signs without a look of their own, such as the choice between two looks of the one before. */
    private static boolean isUnseen(int point) {
        int type = Character.getType(point);
        boolean selects = (point >= 0xFE00 && point <= 0xFE0F) || (point >= 0xE0100 && point <= 0xE01EF);
        return type == Character.FORMAT || selects;
    }
}
