package thalweg.profile;

/**
 * A label with the stroke that leads from it to its place.
 *
 * @param first place it stands for, counted from 0 among those on the picture
 * @param last place it stands for
 * @param text of it
 * @param row of the text
 * @param column where the text begins
 * @param width of the text [cells]
 * @param side of the line on which it stands
 * @param lead column of the stroke
 * @param near row next to the mark of its place, where the stroke begins
 */
record Placed(int first, int last, String text, int row, int column, int width, Side side, int lead, int near) {

    /** Where a label stands. */
    enum Side {
        /** Above the line, with a stroke down to its place. */
        ABOVE,
        /** Right beside its place, without a stroke. */
        BESIDE,
        /** Below the line, with a stroke up to its place. */
        BELOW
    }

    /** Whether its end rather than its beginning stands at its place. */
    boolean endsAtItsPlace() {
        return lead - column > width / 2;
    }

    /** The highest row of its stroke; there is none where it is below the lowest. */
    int topLead() {
        return side == Side.ABOVE ? row + 1 : near;
    }

    int bottomLead() {
        return switch (side) {
            case ABOVE -> near;
            case BELOW -> row - 1;
            case BESIDE -> near - 1;
        };
    }
}
