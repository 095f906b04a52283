package thalweg.plan;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import thalweg.fault.InputException;
import thalweg.fault.Sentence;
import thalweg.logbook.Trip;
import thalweg.route.PartialDate;
import thalweg.settings.Settings;
import thalweg.settings.TripFigure;

/**
 * A trip to plan, as its file states it.
 *
 * @param canyon name, part of it, or id
 * @param on the day
 * @param zone in whose time the day is; empty for that of the computer
 * @param start from the car [minutes after midnight]; empty where nobody said
 * @param people who go, at least one
 * @param ropes at hand
 * @param sets of ropes that leapfrog, 1 or more
 * @param margin by which ropes are counted shorter
 * @param figures stated for this trip alone; those of the settings hold for the rest
 * @param approach as stated; {@link Way#UNKNOWN} for that of the records
 * @param exit as stated; {@link Way#UNKNOWN} for that of the records
 * @param flood as the leader read it; empty where nobody did
 * @param watercourse the longest of the catchment; empty where nobody measured
 * @param callOutMinutes after a late return, until somebody calls for help [min]
 * @param tell who knows about the trip; empty text where nobody does
 * @param paceFrom trips whose noted times the plan goes by, each by its id or its name; empty for the figures as they are
 */
public record TripRequest(
        String canyon,
        LocalDate on,
        Optional<ZoneId> zone,
        Optional<Integer> start,
        List<Trip.Person> people,
        List<RopeAtHand> ropes,
        int sets,
        RopeMargin margin,
        Map<TripFigure, Double> figures,
        Way approach,
        Way exit,
        Optional<Flood> flood,
        Optional<Watercourse> watercourse,
        int callOutMinutes,
        String tell,
        Optional<List<String>> paceFrom) {

    /** Our choice [min]. */
    public static final int CALL_OUT_MINUTES = 120;

    public TripRequest {
        people = List.copyOf(people);
        ropes = List.copyOf(ropes);
        figures = Map.copyOf(figures);
        paceFrom = paceFrom.map(List::copyOf);
        if (people.isEmpty() || sets < 1 || callOutMinutes < 0) {
            throw new IllegalArgumentException("somebody goes, with ropes");
        }
    }

    /**
     * A trip as it stands in the records, with the paces and margins that are ours.
     *
     * @throws InputException when it has no day or nobody goes, or a rope is not believed
     */
    public static TripRequest of(Trip trip) {
        LocalDate on = trip.on()
                .filter(PartialDate::isExact)
                .map(PartialDate::earliest)
                .orElseThrow(() -> new InputException(
                        Sentence.of("A plan needs the day of the trip, such as 2027-05-08; enter it with the trip.")));
        if (trip.people().isEmpty()) {
            throw new InputException(Sentence.of("A plan needs to know who goes; enter the people with the trip."));
        }
        List<RopeAtHand> ropes = trip.ropes().stream().map(RopeAtHand::of).toList();
        if (ropes.size() > ChooseRopes.MOST_ROPES) {
            throw new InputException(Sentence.of(
                    "A plan chooses from at most {0} ropes, and the trip has {1}; take out what stays at home.",
                    ChooseRopes.MOST_ROPES, ropes.size()));
        }
        return new TripRequest(
                trip.canyon().text(),
                on,
                Optional.empty(),
                trip.start(),
                trip.people(),
                ropes,
                trip.ropeSets().orElse(1),
                RopeMargin.STANDARD,
                Map.of(),
                Way.UNKNOWN,
                Way.UNKNOWN,
                Optional.empty(),
                Optional.empty(),
                CALL_OUT_MINUTES,
                "",
                Optional.empty());
    }

    /** A figure as it is stated for this trip, else as it is set, in its unit. */
    public double figure(TripFigure figure, Settings settings) {
        return figures.getOrDefault(figure, settings.figure(figure));
    }

    /** The heaviest of those whose weight is known [kg]; empty where nobody's is. */
    public Optional<Double> heaviestKilograms() {
        return people.stream()
                .flatMap(person -> person.weight().stream())
                .map(weight -> weight.kilograms())
                .max(Double::compare);
    }
}
