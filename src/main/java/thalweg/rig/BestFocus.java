package thalweg.rig;

import java.util.List;
import java.util.Optional;
import thalweg.fault.Sentence;

/**
 * The focus, moved across the aim through the given one, at which the weakest point of an anchor has the most to spare at
 * rest. What a person does by hand: leaning the focus towards the stronger point.
 *
 * @param found the focus; empty where it is unknown or makes no sense for the layout
 * @param saying what keeps the focus from going further, or why there is none: a sentence
 */
public record BestFocus(Optional<Found> found, Sentence saying) {

    /**
     * A focus.
     *
     * @param focus where it is [m]
     * @param shares of the points at the aim, in the order of the input
     * @param leastRatio the smallest strength over largest steady force across the sector, of all points [-]
     * @param ratioAsGiven the same for the focus as it was given [-]
     */
    public record Found(Vector3 focus, List<PointForce> shares, double leastRatio, double ratioAsGiven) {

        public Found {
            shares = List.copyOf(shares);
        }

        /** The ratio in digits, never rounded up. */
        public String times() {
            return Figures.times(leastRatio);
        }

        /** The ratio of the focus as it was given, in digits, never rounded up. */
        public String timesAsGiven() {
            return Figures.times(ratioAsGiven);
        }
    }

    public BestFocus {
        if (saying.toString().isBlank()) {
            throw new IllegalArgumentException("a best focus says why");
        }
    }

    /** Why, in English. */
    public String why() {
        return saying.toString();
    }

    static BestFocus none(Sentence why) {
        return new BestFocus(Optional.empty(), why);
    }
}
