package thalweg.tui.lanterna;

import java.util.OptionalInt;

/**
 * Characters out of bytes, one byte after another. What is not UTF-8 becomes one {@code �} for each part that could have
 * begun a character.
 *
 * @see "The Unicode Standard, table 3-7, Well-Formed UTF-8 Byte Sequences, and 'U+FFFD Substitution of Maximal Subparts'"
 */
final class Utf8 {

    static final int REPLACEMENT = 0xFFFD;

    private int left;
    private int value;
    private int lowest;
    private int highest;

    /** Whether a character has begun and is not complete. */
    boolean pending() {
        return left > 0;
    }

    /** Whether the next byte cannot belong to the character that has begun. */
    boolean isCutOffBy(int oneByte) {
        return left > 0 && (oneByte < lowest || oneByte > highest);
    }

    /** Forgets what has begun. */
    void reset() {
        left = 0;
    }

    /**
     * Takes a byte that does not cut off a character.
     *
     * @param oneByte 0 to 255
     * @return the character, once it is complete
     */
    OptionalInt take(int oneByte) {
        if (left > 0) {
            left--;
            value = (value << 6) | (oneByte & 0x3F);
            lowest = 0x80;
            highest = 0xBF;
            return left == 0 ? OptionalInt.of(value) : OptionalInt.empty();
        }
        if (oneByte < 0x80) {
            return OptionalInt.of(oneByte);
        }
        if (oneByte < 0xC2 || oneByte > 0xF4) {
            return OptionalInt.of(REPLACEMENT);
        }
        left = oneByte < 0xE0 ? 1 : oneByte < 0xF0 ? 2 : 3;
        value = oneByte & (0x3F >> left);
        lowest = oneByte == 0xE0 ? 0xA0 : oneByte == 0xF0 ? 0x90 : 0x80;
        highest = oneByte == 0xED ? 0x9F : oneByte == 0xF4 ? 0x8F : 0xBF;
        return OptionalInt.empty();
    }
}
