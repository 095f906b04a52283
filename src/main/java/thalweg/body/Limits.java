package thalweg.body;

/** The largest values that are believed; beyond them a slip of the finger is likelier than a record. */
public final class Limits {

    /** Longest name or label, in characters. */
    public static final int NAME = 120;

    /** Longest text on one line, in characters. */
    public static final int LINE = 300;

    /** Longest text of several lines, in characters. */
    public static final int PROSE = 4000;

    /** Longest rig file or answer that is kept with a station, in characters. */
    public static final int RIG_TEXT = 19_000;

    /** Highest drop [cm]: 1,000 m. */
    public static final long HEIGHT_CM = 100_000;

    /** Longest line [cm]: 100 km. */
    public static final long DISTANCE_CM = 10_000_000;

    /** Longest rope [cm]: 1,000 m. */
    public static final long ROPE_CM = 100_000;

    /** Farthest point of an anchor from its first [cm]: 50 m. */
    public static final long PLACE_CM = 5_000;

    /** Strongest part [N]: 500 kN. */
    public static final long STRENGTH_N = 500_000;

    /** Longest file name without folders, in characters: what file systems take in bytes. */
    public static final int FILE = 255;

    /** Longest reason of a correction or withdrawal, in characters. */
    public static final int REASON = 500;

    /** Most places of one trip at which times are noted. */
    public static final int TIMES = 2_000;

    /** Most photos of one inspection, people of one trip, ropes of one trip. */
    public static final int LIST = 60;

    private Limits() {}
}
