package thalweg.profile;

/**
 * How large a profile is drawn.
 *
 * @param along letters for a metre along the line, or for a place where they stand evenly
 * @param down letters for a metre of height
 */
record Scale(double along, double down) {

    /** Heights are never drawn more than that many times as large as distances: a step would look like a wall. */
    static final double MOST_TIMES = 50;

    /**
     * The largest that fits, with a round ratio where both directions are to scale.
     *
     * @param toScale whether the distances are
     * @param length of what is drawn, as {@link Stop#along}
     * @param depth of what is drawn [m]
     * @param across room for the length [letters], above 0
     * @param upright room for the depth [letters], above 0
     */
    static Scale fitting(boolean toScale, double length, double depth, double across, double upright) {
        double along = length > 0 ? across / length : 0;
        if (depth <= 0) {
            return new Scale(along, along);
        }
        double down = upright / depth;
        if (!toScale || length <= 0) {
            return new Scale(along, down);
        }
        return down >= along
                ? new Scale(along, along * Round.timesUpTo(Math.min(MOST_TIMES, down / along)))
                : new Scale(down * Round.timesUpTo(along / down), down);
    }
}
