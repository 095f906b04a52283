package thalweg.profile;

/**
 * The room for a picture, measured in letters: half as high as a line is, whatever they are made of.
 *
 * @param columns letters side by side
 * @param rows lines one above the other, at most; a flat profile takes fewer
 */
public record Room(int columns, int rows) {

    /** The smallest room in which a profile says something. */
    public static final Room LEAST = new Room(24, 5);

    /** Whether a profile can be drawn in it. */
    public boolean isEnough() {
        return columns >= LEAST.columns && rows >= LEAST.rows;
    }
}
