package thalweg.rig;

/** What stands in for keys of a rig file that are not stated. An answer lists the ones it used. */
public final class RigDefaults {

    /** To either side of the aim [°]. */
    public static final double SWAY_DEGREES = 0;

    /** Out of the wall [°]. */
    public static final double LEAN_OUT_DEGREES = 0;

    /** Below the master [m]. */
    public static final double ROPE_OUT_METRES = 0;

    /** Log-standard-deviation of a belief in a strength [-]; our choice. */
    public static final double SPREAD = 0.25;

    /** Log-standard-deviation of the load factor [-]; our choice. */
    public static final double LOAD_SPREAD = 0.2;

    /** Strands in a leg: a loop of cord or webbing. */
    public static final int STRANDS = 2;

    /** Whether a twist keeps a sliding master inside its loop when a point fails. */
    public static final boolean CAPTURED = true;

    /** Strands on which the master slides between limiter knots. */
    public static final int SLIDER_STRANDS = 1;

    /**
     * Of a strand on the master [-]; our choice inside what is published for rope on metal, 0.14 to 0.25.
     *
     * @see "Delaney, Physics for Roping Technicians, 2022, p. 88"
     */
    public static final double FRICTION = 0.2;

    private RigDefaults() {}
}
