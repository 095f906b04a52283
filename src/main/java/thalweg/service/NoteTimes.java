package thalweg.service;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import thalweg.body.Limits;
import thalweg.fault.InputException;
import thalweg.fault.Sentence;
import thalweg.ledger.Uid;
import thalweg.logbook.CanyonRecord;
import thalweg.logbook.LineRecord;
import thalweg.logbook.NotedTime;
import thalweg.logbook.Trip;
import thalweg.logbook.TripText;
import thalweg.logbook.TripTime;
import thalweg.route.PartialDate;
import thalweg.text.Fold;

/** Notes when a party was at the places of a line. */
public final class NoteTimes {

    private final Session session;

    public NoteTimes(Session session) {
        this.session = session;
    }

    /**
     * The trip with the times at a place as they are noted now, in the order of the line; nothing is saved yet. Without any
     * time the place is left out.
     *
     * @param place on the line, or one of which a time was noted before
     * @throws InputException when the trip has not begun, it is not the day for "now", or the two do not go together
     */
    public Trip noted(Trip before, Uid place, NotedTime reached, NotedTime left) {
        check(before, reached, left);
        int minute = session.minuteOfDay();
        Optional<Integer> from = reached.at(minute);
        Optional<Integer> to = left.at(minute);
        if (TripTime.isBackwards(from, to)) {
            throw new InputException(Sentence.of(
                    "Left at {0}, reached at {1}: a place is left after it is reached, and within half a day.",
                    TripText.printTime(to.orElseThrow()), TripText.printTime(from.orElseThrow())));
        }
        List<LineRecord> line = line(before);
        String label = line.stream()
                .filter(one -> one.obstacle().uid().equals(place))
                .findFirst()
                .map(TripTime::label)
                .or(() -> before.timeAt(place).map(TripTime::label))
                .orElseThrow(() -> new InputException(Sentence.of("This place is no longer on the line; go back.")));
        List<TripTime> times = new ArrayList<>();
        for (LineRecord one : line) {
            Uid uid = one.obstacle().uid();
            (uid.equals(place) ? time(place, label, from, to) : before.timeAt(uid)).ifPresent(times::add);
        }
        for (TripTime gone : before.times()) {
            if (line.stream().noneMatch(one -> one.obstacle().uid().equals(gone.place()))) {
                (gone.place().equals(place) ? time(place, label, from, to) : Optional.of(gone)).ifPresent(times::add);
            }
        }
        if (times.size() > Limits.TIMES) {
            throw new InputException(Sentence.of(
                    "Times are noted at {0} places; at most {1} go with one trip.", times.size(), Limits.TIMES));
        }
        return before.withTimes(times);
    }

    private static Optional<TripTime> time(Uid place, String label, Optional<Integer> from, Optional<Integer> to) {
        return from.isEmpty() && to.isEmpty() ? Optional.empty() : Optional.of(new TripTime(place, label, from, to));
    }

    private void check(Trip trip, NotedTime reached, NotedTime left) {
        LocalDate today = session.today();
        if (trip.on().filter(day -> !day.hasBegunBy(today)).isPresent()) {
            throw new InputException(Sentence.of(
                    "The trip is on {0}, and today is {1}; times are noted once its day has come.",
                    trip.on().map(PartialDate::print).orElse(""), today));
        }
        boolean now = reached.now() || left.now();
        // A trip may end after midnight.
        if (now
                && trip.on()
                        .filter(day -> day.latest().plusDays(1).isBefore(today))
                        .isPresent()) {
            throw new InputException(Sentence.of(
                    "The trip was on {0}, and today is {1}; type the times, for \"now\" is another day.",
                    trip.on().map(PartialDate::print).orElse(""), today));
        }
    }

    private List<LineRecord> line(Trip trip) {
        return new FindRecord(session)
                .byId(trip.canyon())
                .map(CanyonRecord::line)
                .orElse(List.of());
    }

    /**
     * The place on the line of a trip that somebody names.
     *
     * @param name its number, or the name of it or of a station there; accents and case count for nothing
     * @throws InputException when none or several fit
     */
    public Uid place(Trip trip, String name) {
        List<LineRecord> line = line(trip);
        String wanted = Fold.fold(name.strip());
        List<LineRecord> fit = line.stream()
                .filter(one -> Integer.toString(one.number()).equals(wanted) || named(one, wanted))
                .toList();
        if (fit.size() == 1) {
            return fit.get(0).obstacle().uid();
        }
        String there = (fit.isEmpty() ? line : fit)
                .stream().map(TripTime::label).map(label -> "\"" + label + "\"").collect(Collectors.joining(", "));
        throw new InputException(
                fit.isEmpty()
                        ? there.isEmpty()
                                ? Sentence.of(
                                        "No place on the line is called \"{0}\"; name one by its number.", name.strip())
                                : Sentence.of(
                                        "No place on the line is called \"{0}\"; name one by its number: {1}.",
                                        name.strip(), there)
                        : Sentence.of(
                                "Several places are called \"{0}\"; name one by its number: {1}.",
                                name.strip(), there));
    }

    private static boolean named(LineRecord place, String wanted) {
        return Fold.fold(place.obstacle().name()).equals(wanted)
                || place.stations().stream()
                        .anyMatch(station -> Fold.fold(station.station().name()).equals(wanted));
    }
}
