package thalweg.plan;

import java.util.function.ToDoubleFunction;
import thalweg.settings.TripFigure;

/**
 * How long a group takes for what it does. No published figures are known for any of them: all are our choice, to be replaced
 * by your own.
 *
 * @param rigMinutes to rig a drop [min]
 * @param personMinutes for one person at a drop, besides the way down: clip in, check, clear the rope [min]
 * @param metresPerMinute on the rope [m/min]
 * @param pullMinutes to pull and coil the ropes [min]
 * @param passMinutes for one person at a jump, slide, downclimb, handline or short swim [min]
 * @param walkMetresPerMinute along the line between them [m/min]
 * @param spread of all of them from one day to the next, as the standard deviation of the logarithm [-]
 */
public record Paces(
        double rigMinutes,
        double personMinutes,
        double metresPerMinute,
        double pullMinutes,
        double passMinutes,
        double walkMetresPerMinute,
        double spread) {

    /** Our choice. */
    public static final Paces STANDARD = of(TripFigure::standard);

    public Paces {
        boolean sound = rigMinutes >= 0
                && personMinutes >= 0
                && metresPerMinute > 0
                && pullMinutes >= 0
                && passMinutes >= 0
                && walkMetresPerMinute > 0
                && spread >= 0
                && Double.isFinite(spread);
        if (!sound) {
            throw new IllegalArgumentException("a pace is a time of 0 or more, or a speed above 0");
        }
    }

    /** The paces that figures state. */
    public static Paces of(ToDoubleFunction<TripFigure> figures) {
        return new Paces(
                figures.applyAsDouble(TripFigure.RIG_MIN),
                figures.applyAsDouble(TripFigure.PERSON_MIN),
                figures.applyAsDouble(TripFigure.DOWN_M_PER_MIN),
                figures.applyAsDouble(TripFigure.PULL_MIN),
                figures.applyAsDouble(TripFigure.PASS_MIN),
                figures.applyAsDouble(TripFigure.WALK_M_PER_MIN),
                figures.applyAsDouble(TripFigure.SPREAD));
    }

    /** The same, slower by that factor, above 0. */
    Paces slower(double factor) {
        return new Paces(
                rigMinutes * factor,
                personMinutes * factor,
                metresPerMinute / factor,
                pullMinutes * factor,
                passMinutes * factor,
                walkMetresPerMinute / factor,
                spread);
    }

    /** The same, from one day to the next by that standard deviation of the logarithm, 0 or more. */
    Paces withSpread(double other) {
        return new Paces(
                rigMinutes, personMinutes, metresPerMinute, pullMinutes, passMinutes, walkMetresPerMinute, other);
    }
}
