package thalweg.plan;

import java.util.function.ToDoubleFunction;
import thalweg.settings.TripFigure;

/**
 * When a group rests on the line: at the next place, all together.
 *
 * @param everyMinutes under way until a rest; 0 for never [min]
 * @param minutes of each rest, 0 or more [min]
 */
public record Rests(double everyMinutes, double minutes) {

    /** Nobody rests. */
    public static final Rests NONE = new Rests(0, 0);

    public Rests {
        if (!(everyMinutes >= 0) || !(minutes >= 0)) {
            throw new IllegalArgumentException("a rest takes 0 minutes or more");
        }
    }

    /** The rests that figures state. */
    public static Rests of(ToDoubleFunction<TripFigure> figures) {
        return new Rests(
                figures.applyAsDouble(TripFigure.BREAK_EVERY_MIN), figures.applyAsDouble(TripFigure.BREAK_MIN));
    }
}
