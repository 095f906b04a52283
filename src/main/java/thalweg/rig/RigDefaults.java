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

    private RigDefaults() {}
}
