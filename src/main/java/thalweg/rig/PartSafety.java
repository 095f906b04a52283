package thalweg.rig;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import thalweg.fault.Sentence;
import thalweg.units.Force;

/**
 * How many times the largest force on one part goes into what it is taken to hold. A strength is a belief, and a high ratio
 * is no promise.
 *
 * @param part name of a point, label of a strand such as "A leg", or of a connector such as "A connector"
 * @param kind what it is
 * @param strength what it is taken to hold, and what was taken off
 * @param steady against the largest force over the directions of the load, at rest, without friction
 * @param afterLoss against the largest model peak after the loss of a point, at rest before it at the aim, dry, undamped
 */
public record PartSafety(String part, Kind kind, PartStrength strength, Times steady, Times afterLoss) {

    /** What a part is. */
    public enum Kind {
        POINT,
        STRAND,
        CONNECTOR;

        /** In small letters. */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /**
     * A strength against a force.
     *
     * @param ratio strength over force [-], above 0; empty where it is unknown or nothing is borne
     * @param force the largest on the part, in all of its parallel strands; empty where it is unknown or too small to
     *     count
     * @param idle whether nothing is borne, so that there is no ratio to be known
     * @param saying where the force is largest, as "when B goes"; or why there is no ratio, as a part of a sentence
     */
    public record Times(OptionalDouble ratio, Optional<Force> force, boolean idle, Sentence saying) {

        public Times {
            if (saying.toString().isBlank() || (ratio.isPresent() && (force.isEmpty() || !(ratio.getAsDouble() > 0)))) {
                throw new IllegalArgumentException("a ratio is above 0 and has its force, and all of it is explained");
            }
        }

        static Times known(double ratio, Force force, Sentence where) {
            return new Times(OptionalDouble.of(ratio), Optional.of(force), false, where);
        }

        static Times unknown(Optional<Force> force, Sentence why) {
            return new Times(OptionalDouble.empty(), force, false, why);
        }

        static Times none(Sentence why) {
            return new Times(OptionalDouble.empty(), Optional.empty(), true, why);
        }

        /** Where or why, in English. */
        public String why() {
            return saying.toString();
        }

        /** The ratio in digits, never rounded up: "0.99", "12.3"; empty text where there is none. */
        public String print() {
            return ratio.isPresent() ? Figures.times(ratio.getAsDouble()) : "";
        }

        private String printTimes(double factor) {
            return ratio.isPresent() ? Figures.times(ratio.getAsDouble() * factor) : "";
        }
    }

    /** How much of the nominal strength the least is that is taken to be left [-], 1 where there is no range. */
    public double leastShare() {
        return share(strength.low());
    }

    /**
     * Between what and what a ratio lies by what is known of the factors, as "4.50 to 6.40"; empty text where there is no
     * range or no ratio.
     *
     * @param times one of its two
     */
    public String printRange(Times times) {
        return times.ratio().isEmpty() || !strength.isRange()
                ? ""
                : times.printTimes(leastShare()) + " to " + times.printTimes(share(strength.high()));
    }

    private double share(Optional<Force> bound) {
        return bound.isPresent() && strength.left().isPresent()
                ? bound.get().newtons() / strength.left().get().newtons()
                : 1;
    }

    /** Its name as it is said. */
    public Sentence called() {
        return kind == Kind.POINT ? Sentence.plain(part) : StrandNames.said(part);
    }

    /** The range of a ratio as it is said; empty where {@link #printRange} is. */
    public Optional<Sentence> range(Times times) {
        return times.ratio().isEmpty() || !strength.isRange()
                ? Optional.empty()
                : Optional.of(Sentence.of(
                        "{0} to {1}", times.printTimes(leastShare()), times.printTimes(share(strength.high()))));
    }

    /** Whether it is a strand, which its knots weaken. */
    public boolean strand() {
        return kind == Kind.STRAND;
    }

    public PartSafety {
        if (part.isBlank()) {
            throw new IllegalArgumentException("a part has a name");
        }
    }
}
