package thalweg.plan;

import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import thalweg.settings.TripFigure;

/**
 * Until when to go on from a place, or to leave the line by an escape, so that the group is back before dark when it takes
 * long.
 *
 * @param place on the line that can be left; empty for the car and the beginning of the line
 * @param kind of point on the way
 * @param latest time at which to go on from there, or to leave the line; below 0 where that was the day before [minutes after midnight]
 * @param plannedLate when the group is there if it takes long [minutes after midnight]; empty where the start is unknown
 */
public record TurnAround(Optional<LineStep> place, Kind kind, double latest, Optional<Double> plannedLate) {

    private static final int HOUR = 60;

    /** Where on the way. */
    public enum Kind {
        CAR,
        LINE,
        /** On past an escape. */
        ESCAPE,
        /** Out by it. */
        OUT
    }

    /** Whether the group is there too late if it takes long. */
    public boolean missed() {
        return plannedLate.filter(planned -> planned > latest).isPresent();
    }

    /**
     * The car, the beginning of the line and each place at which it can be left, in order, and each escape whose way out is
     * known. Nothing where sunset is unknown, and nothing but the ways out where the way back is. Of the way to the car and the
     * line from there one run in ten takes longer; where the records state more for the whole line, what is left of it is
     * longer by the same factor.
     */
    public static List<TurnAround> of(Plan plan) {
        Optional<Double> dark = dark(plan);
        Optional<Double> exit = plan.exit().minutes();
        List<TurnAround> points = new ArrayList<>();
        if (dark.isEmpty()) {
            return points;
        }
        Optional<Double> out = exit.map(way -> dark.get() - way);
        Optional<Double> start = plan.request().start().map(Integer::doubleValue);
        Optional<Double> approach = plan.approach().minutes();
        Optional<Double> begin = start.flatMap(from -> approach.map(way -> from + way));
        out.flatMap(until -> approach.map(way -> until - plan.lateLine() - way))
                .ifPresent(latest -> points.add(new TurnAround(Optional.empty(), Kind.CAR, latest, start)));
        out.ifPresent(until -> points.add(new TurnAround(Optional.empty(), Kind.LINE, until - plan.lateLine(), begin)));
        for (Timetable.Step step : plan.timetable().steps()) {
            if (step.step().escape()) {
                Optional<LineStep> place = Optional.of(step.step());
                Optional<Double> there = begin.map(from -> from + plan.late(step));
                out.ifPresent(until ->
                        points.add(new TurnAround(place, Kind.ESCAPE, until - plan.longer() * step.lateRest(), there)));
                step.step()
                        .wayOut()
                        .ifPresent(way -> points.add(new TurnAround(place, Kind.OUT, dark.get() - way, there)));
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
