package thalweg.plan;

import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import thalweg.settings.TripFigure;

/**
 * Until when to go on from a place, so that the group is back before dark when it takes long.
 *
 * @param place on the line that can be left; empty for the car and the beginning of the line
 * @param kind of point on the way
 * @param latest time at which to go on from there; below 0 where that was the day before [minutes after midnight]
 * @param plannedLate when the group is there if it takes long [minutes after midnight]; empty where the start is unknown
 */
public record TurnAround(Optional<LineStep> place, Kind kind, double latest, Optional<Double> plannedLate) {

    private static final int HOUR = 60;

    /** Where on the way. */
    public enum Kind {
        CAR,
        LINE,
        ESCAPE
    }

    /** Whether the group is there too late if it takes long. */
    public boolean missed() {
        return plannedLate.filter(planned -> planned > latest).isPresent();
    }

    /**
     * The car, the beginning of the line and each place at which it can be left, in order; empty where sunset or the way back
     * is unknown. Of the way to the car and the line from there one run in ten takes longer; where the records state more for
     * the whole line, what is left of it is longer by the same factor.
     */
    public static List<TurnAround> of(Plan plan) {
        Optional<Double> dark = dark(plan);
        Optional<Double> exit = plan.exit().minutes();
        List<TurnAround> points = new ArrayList<>();
        if (dark.isEmpty() || exit.isEmpty()) {
            return points;
        }
        double out = dark.get() - exit.get();
        Optional<Double> start = plan.request().start().map(Integer::doubleValue);
        Optional<Double> approach = plan.approach().minutes();
        Optional<Double> begin = start.flatMap(from -> approach.map(way -> from + way));
        approach.ifPresent(
                way -> points.add(new TurnAround(Optional.empty(), Kind.CAR, out - plan.lateLine() - way, start)));
        points.add(new TurnAround(Optional.empty(), Kind.LINE, out - plan.lateLine(), begin));
        double end = plan.timetable().end()[2];
        double longer = end == 0 ? 1 : plan.lateLine() / end;
        for (Timetable.Step step : plan.timetable().steps()) {
            if (step.step().escape()) {
                points.add(new TurnAround(
                        Optional.of(step.step()),
                        Kind.ESCAPE,
                        out - longer * step.lateRest(),
                        begin.map(from -> from + longer * step.late())));
            }
        }
        return points;
    }

    /** Sunset less the reserve [minutes after midnight]; empty where it is unknown. */
    private static Optional<Double> dark(Plan plan) {
        return plan.daylight()
                .flatMap(Daylight::set)
                .map(TurnAround::minuteOf)
                .map(set -> set - plan.figure(TripFigure.LIGHT_RESERVE_MIN));
    }

    private static double minuteOf(ZonedDateTime time) {
        return time.getHour() * HOUR + time.getMinute();
    }
}
