package thalweg.rig;

import java.util.Optional;
import thalweg.fault.Sentence;

/**
 * The values that a key may have.
 *
 * @param least the lowest
 * @param open whether the lowest itself is left out
 * @param most the highest
 * @param unit as written behind a number, with a space before it; empty for none
 */
record Range(double least, boolean open, double most, String unit) {

    /** Wider than any canyon wall that one anchor spans; our choice. */
    static final Range PLACE = new Range(-100, false, 100, " m");

    static final Range LENGTH = new Range(0, false, 100, " m");
    static final Range ROPE = new Range(0, false, 1000, " m");
    static final Range STRENGTH = new Range(0, true, 1000, " kN");

    /** From a rubber band to a steel cable, with room on both sides; our choice. */
    static final Range STIFFNESS = new Range(0.1, false, 100_000, " kN");

    static final Range FORCE = new Range(1e-6, false, 1000, " kN");
    static final Range MASS = new Range(1e-3, false, 100_000, " kg");
    /** Beyond it a fall is meant, and the rope decides; our choice. */
    static final Range FACTOR = new Range(1, false, 10, "");

    static final Range SPREAD = new Range(0, false, 3, "");
    static final Range EFFICIENCY = new Range(0, true, 1, "");

    /** Older than anything textile at an anchor; our choice. */
    static final Range YEARS = new Range(0, false, 100, " years");

    /** From none to more than rubber on dry rock; our choice. */
    static final Range FRICTION = new Range(0, false, 2, "");

    static final Range TOWARD = new Range(-180, false, 180, "°");
    static final Range SWAY = new Range(0, false, 90, "°");
    static final Range LEAN = new Range(-90, false, 90, "°");

    /** What is wrong with a value, beginning in lower case; empty where nothing is. */
    Optional<Sentence> objection(double value) {
        if (!Double.isFinite(value)) {
            return Optional.of(Sentence.of("is not a finite number"));
        }
        boolean highEnough = open ? value > least : value >= least;
        if (highEnough && value <= most) {
            return Optional.empty();
        }
        if (least == 0 && value < 0) {
            return Optional.of(Sentence.of("is {0}, but cannot be negative", with(value)));
        }
        return Optional.of(
                open
                        ? Sentence.of(
                                "is {0}; it must be above {1} and at most {2}",
                                with(value), Figures.plain(least), with(most))
                        : Sentence.of(
                                "is {0}; it must be at least {1} and at most {2}",
                                with(value), Figures.plain(least), with(most)));
    }

    private Sentence with(double value) {
        return unit.equals(" years")
                ? Sentence.of("{0} years", Figures.plain(value))
                : Sentence.plain(Figures.plain(value) + unit);
    }
}
