package thalweg.rig;

import java.util.Locale;
import thalweg.fault.Sentence;

/**
 * How much of a strand's strength common knots leave.
 *
 * <p>Sources disagree, and the share is another one with each knot that is tied: Simon, "Symmetry" 14(9), 2022, 1926,
 * treats it as a random variable. So there are three figures a knot, each with its source. Where a source gives one
 * figure only, how far the truth may lie from it is from memory and says so.
 */
public enum Knot {
    /** A double overhand loop in low-stretch rope. */
    DOUBLE_OVERHAND_LOOP(0.55, Source.MEMORY, 0.618, Source.SAEZ, 0.70, Source.MEMORY),
    /** A water knot in webbing. */
    WATER_KNOT(0.55, Source.MEMORY, 0.64, Source.RESCUE_TABLE, 0.70, Source.MEMORY),
    /** Webbing of 1 in tied to a loop, against its two strands. */
    TIED_LOOP(0.69, Source.GAINES, 0.69, Source.GAINES, 0.75, Source.GAINES),
    /** A double fisherman's knot. */
    DOUBLE_FISHERMANS(0.60, Source.MEMORY, 0.68, Source.RESCUE_TABLE, 0.80, Source.MEMORY),
    /** A figure-eight or one of its family. */
    FIGURE_EIGHT(0.65, Source.MEMORY, 0.80, Source.RESCUE_TABLE, 0.80, Source.RESCUE_TABLE),
    /** A butterfly. */
    BUTTERFLY(0.60, Source.MEMORY, 0.75, Source.RESCUE_TABLE, 0.75, Source.RESCUE_TABLE),
    /** A tensionless hitch. */
    TENSIONLESS_HITCH(0.90, Source.MEMORY, 1.00, Source.RESCUE_TABLE, 1.00, Source.RESCUE_TABLE),
    /** An overhand knot. */
    OVERHAND(0.45, Source.JACOBSON, 0.45, Source.JACOBSON, 0.65, Source.MEMORY),
    /** A bowline. */
    BOWLINE(0.55, Source.MEMORY, 0.60, Source.JACOBSON, 0.75, Source.MEMORY),
    /** A clove hitch. */
    CLOVE_HITCH(0.60, Source.MEMORY, 0.75, Source.JACOBSON, 0.75, Source.JACOBSON),
    /** A girth hitch. */
    GIRTH_HITCH(0.70, Source.MEMORY, 0.70, Source.MEMORY, 0.75, Source.MEMORY);

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
        SAEZ(FactorSource.PUBLISHED, "Saez and others 2024"),
        /** A training table of a rescue team. */
        RESCUE_TABLE(FactorSource.PUBLISHED, "a rescue team's training table"),
        /** Jacobson, "Outdoor Knots", p. 28, after older tests. */
        JACOBSON(FactorSource.PUBLISHED, "Jacobson, Outdoor Knots"),
        /** Derived from Gaines, "Rappelling", 2013, p. 15. */
        GAINES(FactorSource.DERIVED, "after Gaines, Rappelling, 2013"),
        /** From memory, unconfirmed. */
        MEMORY(FactorSource.MEMORY, "from memory");

        private final FactorSource kind;
        private final String words;

        Source(FactorSource kind, String words) {
            this.kind = kind;
            this.words = words;
        }

        FactorSource kind() {
            return kind;
        }

        /** As it stands in a sentence. */
        String words() {
            return words;
        }
    }

    private final double low;
    private final Source lowSource;
    private final double nominal;
    private final Source nominalSource;
    private final double high;
    private final Source highSource;

    Knot(double low, Source lowSource, double nominal, Source nominalSource, double high, Source highSource) {
        this.low = low;
        this.lowSource = lowSource;
        this.nominal = nominal;
        this.nominalSource = nominalSource;
        this.high = high;
        this.highSource = highSource;
    }

    /** The least it is taken to leave. */
    public Share low() {
        return new Share(low, lowSource);
    }

    /** What is used unless somebody chooses otherwise. */
    public Share nominal() {
        return new Share(nominal, nominalSource);
    }

    /** The most it is taken to leave. */
    public Share high() {
        return new Share(high, highSource);
    }

    /** What it leaves, as one factor of a strength. */
    StrengthFactor factor() {
        Sentence name = Sentence.word(word().replace('_', ' ').replace("mans", "man's"));
        boolean oneSource = lowSource == nominalSource && highSource == nominalSource;
        Sentence named = nominalSource == Source.MEMORY
                ? name
                : Sentence.of("{0}, {1}", name, Sentence.word(nominalSource.words()));
        Sentence words = oneSource ? named : Sentence.of("{0}; {1}", named, bounds());
        return new StrengthFactor(StrengthChain.KNOT, low, nominal, high, nominalSource.kind(), words);
    }

    private Sentence bounds() {
        Sentence low = Sentence.word(lowSource.words());
        return lowSource == highSource
                ? Sentence.of("range {0}", low)
                : Sentence.of("low {0}, high {1}", low, Sentence.word(highSource.words()));
    }

    /** How a rig file names it. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** Under which the phrases keep its name. */
    public String key() {
        return "rig.knot." + name().toLowerCase(Locale.ROOT);
    }
}
