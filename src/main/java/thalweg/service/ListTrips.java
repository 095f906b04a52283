package thalweg.service;

import java.util.List;
import java.util.Optional;
import thalweg.ledger.Uid;
import thalweg.logbook.TripInCanyon;

/** Lists trips: what is planned first, then what was done. */
public final class ListTrips {

    private final Session session;

    public ListTrips(Session session) {
        this.session = session;
    }

    /**
     * Trips to one canyon or to all.
     *
     * @param canyon empty for all
     */
    public List<TripInCanyon> of(Optional<Uid> canyon) {
        return session.local().trips(canyon);
    }

    /** The trip of that id, if there is one. */
    public Optional<TripInCanyon> byId(Uid uid) {
        return session.local().trip(uid);
    }
}
