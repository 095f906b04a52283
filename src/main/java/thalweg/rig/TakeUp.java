package thalweg.rig;

/**
 * How much length knots and tails take beyond what a layout spans. All but the tails are from memory, for webbing of 25 mm
 * and cord of 7 to 8 mm; tie one and measure it, and change the figure here.
 */
public final class TakeUp {

    /**
     * Each of the two tails of a ring bend [m], at least.
     *
     * <p>Source: a rope manual of an Australian government, 75 mm.
     */
    public static final double RING_BEND_TAIL_METRES = 0.075;

    /** In the ring bend itself, of both ends together [m]; from memory. */
    public static final double RING_BEND_METRES = 0.30;

    /** A knot with a small loop in the end of a strand, its tail included [m]; from memory. */
    public static final double END_LOOP_METRES = 0.45;

    /** Each strand that passes the knot that gathers the legs at the master [m]; from memory. */
    public static final double MASTER_KNOT_METRES = 0.20;

    /** Each strand that passes a limiter knot [m]; from memory. */
    public static final double LIMITER_KNOT_METRES = 0.15;

    private TakeUp() {}

    /** What closing a loop takes [m]. */
    static double ringBend() {
        return RING_BEND_METRES + 2 * RING_BEND_TAIL_METRES;
    }
}
