package thalweg.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import thalweg.logbook.CanyonRecord;
import thalweg.logbook.LineRecord;
import thalweg.route.ObstacleKind;
import thalweg.units.Length;

/**
 * One place of the line as the timetable goes over it.
 *
 * @param place on the line, counted from 1
 * @param name empty text where it has none
 * @param roped whether it takes a rope that is rigged and pulled
 * @param metres to go down on the rope [m], 0 or more
 * @param walk from the place before [m], 0 or more
 * @param passes whether people pass it one at a time
 * @param escape whether the canyon can be left here
 * @param wayOut how long it then takes to walk out, 1 or more [min]; empty where nobody said
 */
public record LineStep(
        int place,
        String name,
        boolean roped,
        double metres,
        double walk,
        boolean passes,
        boolean escape,
        Optional<Integer> wayOut) {

    /** A step of which nobody said how long the way out takes. */
    public LineStep(int place, String name, boolean roped, double metres, double walk, boolean passes, boolean escape) {
        this(place, name, roped, metres, walk, passes, escape, Optional.empty());
    }

    /** The line of a canyon; what is unknown of it is counted as none and told by {@link #unknown}. */
    public static List<LineStep> of(CanyonRecord canyon) {
        List<LineStep> steps = new ArrayList<>();
        double before = 0;
        for (LineRecord place : canyon.line()) {
            Optional<Length> distance = place.obstacle().distance();
            double walk =
                    distance.map(Length::metres).map(far -> Math.max(0, far)).orElse(before) - before;
            before = Math.max(before, before + walk);
            ObstacleKind kind = place.obstacle().kind();
            Optional<RopeNeed> need = kind == ObstacleKind.DROP
                    ? RopeNeed.of(canyon).stream()
                            .filter(one -> one.place() == place.number())
                            .findFirst()
                    : Optional.empty();
            steps.add(new LineStep(
                    place.number(),
                    place.obstacle().name(),
                    kind == ObstacleKind.DROP,
                    need.flatMap(RopeNeed::length).map(Length::metres).orElse(0.0),
                    Math.max(0, walk),
                    kind != ObstacleKind.WALK && kind != ObstacleKind.HAZARD && kind != ObstacleKind.ESCAPE,
                    kind == ObstacleKind.ESCAPE,
                    place.obstacle().wayOut()));
        }
        return steps;
    }

    /** How many places have no distance or, where they are roped, no length. */
    public static long unknown(CanyonRecord canyon) {
        return canyon.line().stream()
                .filter(place -> place.obstacle().distance().isEmpty()
                        || (place.obstacle().kind() == ObstacleKind.DROP
                                && place.obstacle().height().isEmpty()
                                && place.stations().stream()
                                        .allMatch(station ->
                                                station.station().ropeNeeded().isEmpty())))
                .count();
    }
}
