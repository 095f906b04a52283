package thalweg.plan;

/** How long a way on foot takes, by three published rules. None of them knows the ground, the load or the heat. */
public final class Walking {

    private static final double MINUTES = 60;

    private Walking() {}

    /**
     * 4 km/h on the flat, 300 m/h up, 500 m/h down; the larger of the two times and half of the smaller.
     *
     * @param metres along the way [m], 0 or more
     * @param up [m], 0 or more
     * @param down [m], 0 or more
     * @return [min]
     * @see "DIN 33466"
     */
    public static double din(double metres, double up, double down) {
        double flat = metres / 4000;
        double height = up / 300 + down / 500;
        return MINUTES * (Math.max(flat, height) + Math.min(flat, height) / 2);
    }

    /**
     * 5 km/h and an hour for each 600 m up; nothing is taken off or added for the way down.
     *
     * @return [min]
     * @see "Naismith, Scottish Mountaineering Club Journal, 1892, in its metric form"
     */
    public static double naismith(double metres, double up) {
        return MINUTES * (metres / 5000 + up / 600);
    }

    /**
     * The speed at a slope, fastest slightly downhill.
     *
     * @param slope rise over run [-], below 0 downhill
     * @return [km/h]
     * @see "Tobler, Three Presentations on Geographical Analysis and Modeling, 1993"
     */
    public static double toblerSpeed(double slope) {
        return 6 * Math.exp(-3.5 * Math.abs(slope + 0.05));
    }

    /**
     * By Tobler's speed, the way up and the way down each on an even slope and the distance shared between them by their
     * heights: how it is really shared is not known here.
     *
     * @return [min]
     */
    public static double tobler(double metres, double up, double down) {
        if (up + down == 0) {
            return MINUTES * metres / 1000 / toblerSpeed(0);
        }
        return part(metres * up / (up + down), up) + part(metres * down / (up + down), -down);
    }

    private static double part(double metres, double rise) {
        if (metres == 0) {
            return 0;
        }
        double run = Math.sqrt(Math.max(metres * metres - rise * rise, 1e-12 * metres * metres));
        return MINUTES * metres / 1000 / toblerSpeed(rise / run);
    }
}
