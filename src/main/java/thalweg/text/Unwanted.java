package thalweg.text;

/** The characters that no text of a person needs: controls, and what hides, turns around or forges what is seen. */
final class Unwanted {

    /** How many combining marks may follow one another: enough for pointed Hebrew, too few to paint over other lines. */
    static final int MOST_MARKS = 4;

    private static final int ZERO_WIDTH_NON_JOINER = 0x200C;
    private static final int ZERO_WIDTH_JOINER = 0x200D;

    private Unwanted() {}

    /** Whether the character has no place in a text; line feed and tab are among them, as controls. */
    static boolean is(int codePoint) {
        return switch (Character.getType(codePoint)) {
            case Character.CONTROL, Character.SURROGATE, Character.LINE_SEPARATOR, Character.PARAGRAPH_SEPARATOR ->
                true;
            case Character.FORMAT -> !isJoiner(codePoint) && !isVisibleFormat(codePoint);
            default -> isNothingToSee(codePoint) || isNoncharacter(codePoint);
        };
    }

    /** The two signs of no width that writing needs: they part or join letters (Persian, Malayalam) and pictures. */
    static boolean isJoiner(int codePoint) {
        return codePoint == ZERO_WIDTH_JOINER || codePoint == ZERO_WIDTH_NON_JOINER;
    }

    /** A sign that combines with the character before it. */
    static boolean isMark(int codePoint) {
        return switch (Character.getType(codePoint)) {
            case Character.NON_SPACING_MARK, Character.ENCLOSING_MARK, Character.COMBINING_SPACING_MARK -> true;
            default -> false;
        };
    }

    /** Arabic, Syriac and Kaithi number signs: of the format category, yet painted. Source: PropList.txt 15.0.0. */
    static boolean isVisibleFormat(int codePoint) {
        return (codePoint >= 0x600 && codePoint <= 0x605)
                || codePoint == 0x6DD
                || codePoint == 0x70F
                || codePoint == 0x890
                || codePoint == 0x891
                || codePoint == 0x8E2
                || codePoint == 0x110BD
                || codePoint == 0x110CD;
    }

    /**
     * Letters and marks that paint nothing: the grapheme joiner, Hangul fillers, inherent Khmer vowels; and the places
     * that are kept free for more such signs. Source: Default_Ignorable_Code_Point, DerivedCoreProperties.txt 15.0.0,
     * without variation selectors.
     */
    private static boolean isNothingToSee(int codePoint) {
        return codePoint == 0x34F
                || codePoint == 0x115F
                || codePoint == 0x1160
                || codePoint == 0x17B4
                || codePoint == 0x17B5
                || codePoint == 0x2065
                || codePoint == 0x3164
                || codePoint == 0xFFA0
                || (codePoint >= 0xFFF0 && codePoint <= 0xFFF8)
                || (codePoint >= 0xE0000 && codePoint <= 0xE0FFF && !isVariationSelector(codePoint));
    }

    private static boolean isVariationSelector(int codePoint) {
        return codePoint >= 0xE0100 && codePoint <= 0xE01EF;
    }

    private static boolean isNoncharacter(int codePoint) {
        return (codePoint & 0xFFFE) == 0xFFFE || (codePoint >= 0xFDD0 && codePoint <= 0xFDEF);
    }
}
