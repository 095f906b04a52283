package thalweg.rig;

import java.util.Locale;

/**
 * How much of a strand's strength common knots leave.
 *
 * <p>Sources disagree, and the share is another one with each knot that is tied: Simon, "Symmetry" 14(9), 2022, 1926,
 * treats it as a random variable. So there are three figures a knot, each with its source. Where a source gives one
 * figure only, how far the truth may lie from it is from memory and says so.
 */
public enum Knot {
    /** A double overhand loop in low-stretch rope. */
    DOUBLE_OVERHAND_LOOP(memory(0.55), new Share(0.618, Source.SAEZ), memory(0.70)),
    /** A water knot in webbing. */
    WATER_KNOT(memory(0.55), table(0.64), memory(0.70)),
    /** Webbing of 1 in tied to a loop, against its two strands. */
    TIED_LOOP(new Share(0.69, Source.GAINES), new Share(0.69, Source.GAINES), new Share(0.75, Source.GAINES)),
    /** A double fisherman's knot. */
    DOUBLE_FISHERMANS(memory(0.60), table(0.68), memory(0.80)),
    /** A figure-eight or one of its family. */
    FIGURE_EIGHT(memory(0.65), table(0.80), table(0.80)),
    /** A butterfly. */
    BUTTERFLY(memory(0.60), table(0.75), table(0.75)),
    /** A tensionless hitch. */
    TENSIONLESS_HITCH(memory(0.90), table(1.00), table(1.00)),
    /** An overhand knot. */
    OVERHAND(new Share(0.45, Source.JACOBSON), new Share(0.45, Source.JACOBSON), memory(0.65)),
    /** A bowline. */
    BOWLINE(memory(0.55), new Share(0.60, Source.JACOBSON), memory(0.75)),
    /** A clove hitch. */
    CLOVE_HITCH(memory(0.60), new Share(0.75, Source.JACOBSON), new Share(0.75, Source.JACOBSON)),
    /** A girth hitch. */
    GIRTH_HITCH(memory(0.70), memory(0.70), memory(0.75));

    /**
     * A share of the strength.
     *
     * @param left what the knot leaves [-], above 0 and at most 1
     * @param source where that is from
     */
    public record Share(double left, Source source) {

        public Share {
            if (!(left > 0) || left > 1) {
                throw new IllegalArgumentException("a knot leaves more than nothing and no more than all");
            }
        }
    }

    /** Where a share is from. */
    public enum Source {
        /** Saez and others, "Symmetry" 16(2), 2024, 167: the mean of 90 tests. */
        SAEZ,
        /** A training table of a rescue team. */
        RESCUE_TABLE,
        /** Jacobson, "Outdoor Knots", p. 28, after older tests. */
        JACOBSON,
        /** Derived from Gaines, "Rappelling", 2013, p. 15. */
        GAINES,
        /** From memory, unconfirmed. */
        MEMORY;

        /** Under which the phrases keep what it is called. */
        public String key() {
            return "rig.knot_source." + name().toLowerCase(Locale.ROOT);
        }
    }

    private final Share low;
    private final Share nominal;
    private final Share high;

    Knot(Share low, Share nominal, Share high) {
        this.low = low;
        this.nominal = nominal;
        this.high = high;
    }

    private static Share memory(double left) {
        return new Share(left, Source.MEMORY);
    }

    private static Share table(double left) {
        return new Share(left, Source.RESCUE_TABLE);
    }

    /** The least it is taken to leave. */
    public Share low() {
        return low;
    }

    /** What is used unless somebody chooses otherwise. */
    public Share nominal() {
        return nominal;
    }

    /** The most it is taken to leave. */
    public Share high() {
        return high;
    }

    /** Under which the phrases keep its name. */
    public String key() {
        return "rig.knot." + name().toLowerCase(Locale.ROOT);
    }
}
