package thalweg.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import thalweg.logbook.CanyonRecord;
import thalweg.logbook.LineRecord;
import thalweg.logbook.Trip;
import thalweg.logbook.TripTime;
import thalweg.settings.TripFigure;

/**
 * How long a trip took against what its group was to take on that line by the figures, leg by leg.
 *
 * @param trip that was done
 * @param ratios taken over planned of each leg that tells [-], each above 0; may be empty
 * @param leftOut legs whose noted times cannot be, such as one that ends before it begins
 */
public record PacedTrip(Trip trip, List<Double> ratios, int leftOut) {

    /** Times are noted to the minute: a leg planned to be shorter counts together with the next [min]. Our choice. */
    static final double SHORTEST_LEG = 5;

    public PacedTrip {
        ratios = List.copyOf(ratios);
        if (leftOut < 0 || ratios.stream().anyMatch(ratio -> !(ratio > 0))) {
            throw new IllegalArgumentException("a leg takes time");
        }
    }

    /**
     * When somebody noted to be at a place, and when that was to be.
     *
     * @param planned from the beginning of the line [min]
     * @param noted [minutes after midnight, 0 to 1439]
     */
    record Moment(double planned, int noted) {}

    /**
     * The trip against its line as it is entered now; places that are no longer on it count for nothing. A trip that is not
     * done, or of which nobody is entered to go, tells nothing.
     *
     * @param figures in their units
     */
    public static PacedTrip of(Trip trip, CanyonRecord canyon, ToDoubleFunction<TripFigure> figures) {
        boolean tells = trip.state() == Trip.State.DONE
                && !trip.people().isEmpty()
                && !trip.times().isEmpty();
        return tells ? of(trip, moments(trip, canyon, figures)) : new PacedTrip(trip, List.of(), 0);
    }

    /** From one moment to the next, along the line. */
    static PacedTrip of(Trip trip, List<Moment> moments) {
        List<Double> ratios = new ArrayList<>();
        int leftOut = 0;
        int from = 0;
        for (int to = 1; to < moments.size(); to++) {
            double planned = moments.get(to).planned() - moments.get(from).planned();
            if (planned < SHORTEST_LEG) {
                continue;
            }
            int taken =
                    Math.floorMod(moments.get(to).noted() - moments.get(from).noted(), Trip.DAY);
            if (taken > 0 && taken <= Trip.DAY / 2) {
                ratios.add(taken / planned);
            } else {
                leftOut++;
            }
            from = to;
        }
        return new PacedTrip(trip, ratios, leftOut);
    }

    private static List<Moment> moments(Trip trip, CanyonRecord canyon, ToDoubleFunction<TripFigure> figures) {
        DescentRun run = new DescentRun(
                LineStep.of(canyon),
                Party.of(trip.people(), figures.applyAsDouble(TripFigure.BEGINNER_FACTOR)),
                trip.ropeSets().orElse(1),
                Paces.of(figures),
                Rests.of(figures));
        run.run();
        List<Moment> moments = new ArrayList<>();
        List<LineRecord> line = canyon.line();
        for (int i = 0; i < line.size(); i++) {
            Optional<TripTime> time = trip.timeAt(line.get(i).obstacle().uid());
            double reached = run.reached()[i];
            double left = run.left()[i];
            time.flatMap(TripTime::reached).ifPresent(noted -> moments.add(new Moment(reached, noted)));
            time.flatMap(TripTime::left).ifPresent(noted -> moments.add(new Moment(left, noted)));
        }
        return moments;
    }

    /** How many times as long as planned it took, as the legs have it in the middle [-]; empty without legs. */
    public Optional<Double> factor() {
        return OwnPace.middle(ratios).map(Math::exp);
    }
}
