package thalweg.service;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import thalweg.fault.InputException;
import thalweg.fault.Sentence;
import thalweg.ledger.Uid;
import thalweg.logbook.CanyonRecord;
import thalweg.logbook.Trip;
import thalweg.logbook.TripInCanyon;
import thalweg.plan.OwnPace;
import thalweg.plan.PacedTrip;
import thalweg.settings.TripFigure;
import thalweg.text.Fold;

/** Learns from the times noted on trips how a group goes against the figures. */
final class LearnPace {

    private final Session session;
    private final ToDoubleFunction<TripFigure> figures;
    private final Map<Uid, Optional<CanyonRecord>> canyons = new HashMap<>();

    /**
     * @param figures that the trips are held against, in their units
     */
    LearnPace(Session session, ToDoubleFunction<TripFigure> figures) {
        this.session = session;
        this.figures = figures;
    }

    /**
     * What those trips teach.
     *
     * @param named trips by their ids, or by their name all that were done under it
     * @throws InputException when there is no such trip
     */
    OwnPace from(List<String> named) {
        Map<Uid, Trip> trips = new LinkedHashMap<>();
        named.forEach(one -> found(one).forEach(trip -> trips.put(trip.uid(), trip)));
        return learned(List.copyOf(trips.values()));
    }

    private List<Trip> found(String named) {
        ListTrips list = new ListTrips(session);
        Optional<Trip> byId = Uid.parse(named).flatMap(list::byId).map(TripInCanyon::trip);
        if (byId.isPresent()) {
            return List.of(byId.get());
        }
        List<Trip> byName = done().stream()
                .filter(trip -> Fold.fold(trip.name()).equals(Fold.fold(named.strip())))
                .toList();
        if (byName.isEmpty()) {
            throw new InputException(Sentence.of(
                    "No trip that was done has the id or the name \"{0}\"; `trips` lists what there is.",
                    named.strip()));
        }
        return byName;
    }

    private List<Trip> done() {
        return new ListTrips(session)
                .of(Optional.empty()).stream()
                        .map(TripInCanyon::trip)
                        .filter(trip -> trip.state() == Trip.State.DONE)
                        .toList();
    }

    /** What the trips teach that somebody chose for another; empty where they did not. */
    Optional<OwnPace> of(Trip trip) {
        return trip.paceFrom()
                .map(from -> learned(done().stream()
                        .filter(other -> !other.uid().equals(trip.uid()))
                        .filter(other -> from == Trip.PaceFrom.ALL
                                || (!trip.name().isBlank()
                                        && Fold.fold(other.name()).equals(Fold.fold(trip.name()))))
                        .toList()));
    }

    private OwnPace learned(List<Trip> trips) {
        List<PacedTrip> paced = new ArrayList<>();
        trips.forEach(trip -> canyon(trip).ifPresent(canyon -> paced.add(PacedTrip.of(trip, canyon, figures))));
        return new OwnPace(paced);
    }

    private Optional<CanyonRecord> canyon(Trip trip) {
        return canyons.computeIfAbsent(trip.canyon(), new FindRecord(session)::byId);
    }
}
