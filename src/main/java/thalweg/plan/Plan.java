package thalweg.plan;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import thalweg.due.DuePart;
import thalweg.settings.TripFigure;

/**
 * Everything that was worked out for a trip.
 *
 * @param request what was asked
 * @param canyonName as entered
 * @param invented whether the canyon is made up for practice
 * @param ropes which to carry
 * @param approach to the canyon, as stated in the file or the records
 * @param exit from it
 * @param timetable of the line
 * @param statedLine how long the records say that the line takes [min]; empty where they do not
 * @param unmeasured how many places of the line have no distance or length, so that it takes longer than the timetable says
 * @param daylight empty where nobody entered where the canyon is
 * @param concentration of the catchment by Kirpich's formula [min]; empty where nobody measured it
 * @param season as the records state it; empty where they do not
 * @param due what is due on the way on that day
 * @param reviews of kept analyses with the heaviest of the group
 * @param heaviest that they were made with [kg]; empty where nobody's weight is known, then as they were kept
 * @param bring what replaces parts on the way
 * @param figures that were gone by, every one there is, in their units
 * @param pace that own trips taught; empty where nobody asked for it
 * @param parts how many are entered, whether anything is due of them or not
 * @param past whether the day is over
 * @param withoutAnalysis names of stations of drops that have no analysis
 */
public record Plan(
        TripRequest request,
        String canyonName,
        boolean invented,
        RopeChoice ropes,
        Way approach,
        Way exit,
        Timetable timetable,
        Optional<Integer> statedLine,
        long unmeasured,
        Optional<Daylight> daylight,
        OptionalDouble concentration,
        Optional<String> season,
        List<DuePart> due,
        List<RigReview> reviews,
        Optional<Double> heaviest,
        Bring bring,
        Map<TripFigure, Double> figures,
        Optional<OwnPace> pace,
        int parts,
        boolean past,
        List<String> withoutAnalysis) {

    public Plan {
        due = List.copyOf(due);
        figures = Map.copyOf(figures);
        reviews = List.copyOf(reviews);
        withoutAnalysis = List.copyOf(withoutAnalysis);
    }

    /** How long the line takes when it takes long: one run in ten is slower, or what the records state, if that is more [min]. */
    public double lateLine() {
        return Math.max(timetable.end()[2], statedLine.orElse(0));
    }

    /** How much longer than simulated the line takes when it takes long, for what the records state is more [-], 1 or more. */
    double longer() {
        return longer(timetable, statedLine);
    }

    /**
     * The same for a timetable alone.
     *
     * @param stated for the whole line, if the records state it [min]
     */
    public static double longer(Timetable timetable, Optional<Integer> stated) {
        double simulated = timetable.end()[2];
        return simulated == 0 ? 1 : Math.max(1, stated.orElse(0) / simulated);
    }

    /** When the last is past a place of the line, from its beginning, when it takes long [min]. */
    public double late(Timetable.Step step) {
        return longer() * step.late();
    }

    /** From the car to the car when it takes long [min]; empty where a way is unknown. */
    public OptionalDouble lateWhole() {
        return approach.minutes().isPresent() && exit.minutes().isPresent()
                ? OptionalDouble.of(
                        approach.minutes().get() + lateLine() + exit.minutes().get())
                : OptionalDouble.empty();
    }

    /** A figure that was gone by, in its unit. */
    public double figure(TripFigure figure) {
        return figures.getOrDefault(figure, figure.standard());
    }
}
