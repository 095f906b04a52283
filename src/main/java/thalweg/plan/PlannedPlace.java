package thalweg.plan;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import thalweg.text.Phrases;

/**
 * When a group should have passed a place of the line, as text.
 *
 * @param place on the line, counted from 1
 * @param usual half of the runs are faster: a time of day, or from the beginning of the line where the start is unknown
 * @param late one run in ten is slower; never before what the records state for the whole line makes of it
 * @param onBefore until when to go on from an escape so that it is light to the end; empty elsewhere and where unknown
 * @param outBefore until when to leave the line there; empty elsewhere and where unknown
 */
public record PlannedPlace(
        int place, String usual, String late, Optional<String> onBefore, Optional<String> outBefore) {

    /** Every place of the line, in order. */
    public static List<PlannedPlace> of(Plan plan, Phrases phrases) {
        Optional<Double> begin = plan.request()
                .start()
                .flatMap(start -> plan.approach().minutes().map(way -> start + way));
        Map<Integer, String> onBefore = new HashMap<>();
        Map<Integer, String> outBefore = new HashMap<>();
        for (TurnAround point : TurnAround.of(plan)) {
            point.place()
                    .ifPresent(step -> (point.kind() == TurnAround.Kind.OUT ? outBefore : onBefore)
                            .put(
                                    step.place(),
                                    point.latest() < 0
                                            ? phrases.say("sheet.trip.too_late")
                                            : TimeWords.latest(point.latest())));
        }
        List<PlannedPlace> places = new ArrayList<>();
        for (Timetable.Step step : plan.timetable().steps()) {
            int number = step.step().place();
            places.add(new PlannedPlace(
                    number,
                    at(begin, step.middle()),
                    at(begin, plan.late(step)),
                    Optional.ofNullable(onBefore.get(number)),
                    Optional.ofNullable(outBefore.get(number))));
        }
        return places;
    }

    private static String at(Optional<Double> begin, double minutes) {
        return begin.map(start -> TimeWords.clock(start + minutes)).orElseGet(() -> "+" + TimeWords.clock(minutes));
    }

    /** A time of day, as it stands in a plan [minutes after midnight]. */
    public static String clock(int minutes) {
        return TimeWords.clock(minutes);
    }
}
