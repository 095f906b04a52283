package thalweg.service;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import thalweg.body.ThingBody;
import thalweg.exchange.gpx.Waypoint;
import thalweg.fault.ChangedMeanwhileException;
import thalweg.fault.Sentence;
import thalweg.ledger.OrderKey;
import thalweg.ledger.Revision;
import thalweg.ledger.Uid;
import thalweg.logbook.LineRecord;
import thalweg.place.Position;
import thalweg.placing.Decision;
import thalweg.placing.Placing;
import thalweg.placing.Spot;
import thalweg.route.Canyon;
import thalweg.route.Obstacle;
import thalweg.route.Prose;
import thalweg.route.Station;
import thalweg.route.StationText;
import thalweg.storage.Batch;

/** Writes what a person decided about the waypoints of a file: all of it in one transaction, or nothing. */
public final class PlaceWaypoints {

    private final Session session;

    public PlaceWaypoints(Session session) {
        this.session = session;
    }

    /**
     * Writes the new places and stations, the coordinates of those that were there, and a new canyon before them.
     *
     * @throws ChangedMeanwhileException when the canyon or what was placed on it was changed from elsewhere
     * @throws thalweg.fault.StoreException when the database cannot be written
     */
    public void write(Placing placing) {
        session.ledger()
                .append(new Batch(
                        new Writer(session, placing).revisions(), List.of(), session.keeper(), session.now()));
    }

    /** Works out the revisions of one placing, parents before children. */
    private static final class Writer {

        private final Session session;
        private final SaveThing save;
        private final Placing placing;
        private final List<Revision> revisions = new ArrayList<>();
        private final Map<Spot, Uid> uids = new HashMap<>();
        private final Map<Spot, String> lastStation = new HashMap<>();

        Writer(Session session, Placing placing) {
            this.session = session;
            this.save = new SaveThing(session);
            this.placing = placing;
        }

        List<Revision> revisions() {
            canyon();
            places();
            for (int i = 0; i < placing.decisions().size(); i++) {
                if (placing.decisions().get(i) instanceof Decision.PlacePosition decision) {
                    placePosition(decision.obstacle(), at(i));
                } else if (placing.decisions().get(i) instanceof Decision.StationPosition decision) {
                    stationPosition(decision.station(), at(i));
                } else if (placing.decisions().get(i) instanceof Decision.NewStation decision) {
                    newStation(placing.waypoints().get(i), decision);
                }
            }
            return revisions;
        }

        private Optional<Position> at(int waypoint) {
            return Optional.of(placing.waypoints().get(waypoint).position());
        }

        private void canyon() {
            Canyon canyon = placing.canyon().canyon();
            int start = placing.decisions().indexOf(new Decision.CanyonStart());
            ThingBody after = ThingBody.of(start < 0 ? canyon : startingAt(canyon, at(start)));
            if (placing.isNew()) {
                revisions.add(save.first(after));
                return;
            }
            refuseGone(canyon.uid());
            save.next(ThingBody.of(canyon), after).ifPresent(revisions::add);
        }

        private static Canyon startingAt(Canyon canyon, Optional<Position> position) {
            return new Canyon(
                    canyon.uid(),
                    canyon.name(),
                    canyon.otherNames(),
                    canyon.region(),
                    canyon.country(),
                    canyon.french(),
                    canyon.american(),
                    position,
                    canyon.times(),
                    canyon.longestDrop(),
                    canyon.prose(),
                    canyon.invented());
        }

        /** What new things are hung on must still be there; whether it was edited meanwhile does not matter to them. */
        private void refuseGone(Uid thing) {
            if (session.ledger().head(thing).filter(head -> !head.deleted()).isEmpty()) {
                throw new ChangedMeanwhileException(Sentence.of(
                        "What waypoints were placed on was taken out from elsewhere in the meantime; nothing was"
                                + " saved. Go back and place them again."));
            }
        }

        private void places() {
            List<Spot> line = placing.line();
            for (int from = 0; from < line.size(); from++) {
                if (line.get(from) instanceof Spot.Known known) {
                    uids.put(known, known.obstacle());
                    continue;
                }
                int to = from;
                while (to < line.size() && line.get(to) instanceof Spot.Made) {
                    to++;
                }
                String before = from == 0 ? "" : order(line.get(from - 1));
                List<String> orders = new ArrayList<>();
                between(before, orderAfter(before, to), to - from, orders);
                for (int i = from; i < to; i++) {
                    newPlace((Spot.Made) line.get(i), orders.get(i - from));
                }
                from = to - 1;
            }
        }

        private String order(Spot spot) {
            return spot instanceof Spot.Known known
                    ? place(known.obstacle()).obstacle().order()
                    : "";
        }

        /** The first order from that place on that lies beyond: places that two keepers entered may share one. */
        private String orderAfter(String before, int from) {
            return placing.line().subList(from, placing.line().size()).stream()
                    .map(this::order)
                    .filter(order -> order.compareTo(before) > 0)
                    .findFirst()
                    .orElse("");
        }

        /** Halves the room again and again, so that the keys of many places stay short. */
        private static void between(String before, String after, int count, List<String> orders) {
            if (count == 0) {
                return;
            }
            String middle = OrderKey.between(before, after);
            int left = count / 2;
            between(before, middle, left, orders);
            orders.add(middle);
            between(middle, after, count - left - 1, orders);
        }

        private LineRecord place(Uid obstacle) {
            return placing.canyon().place(obstacle).orElseThrow();
        }

        private void newPlace(Spot.Made spot, String order) {
            Waypoint waypoint = placing.waypoints().get(spot.waypoint());
            Decision.NewPlace decision = (Decision.NewPlace) placing.decisions().get(spot.waypoint());
            Uid uid = session.mint();
            uids.put(spot, uid);
            revisions.add(save.first(ThingBody.of(new Obstacle(
                    uid,
                    placing.canyon().canyon().uid(),
                    order,
                    decision.kind(),
                    waypoint.name(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.of(waypoint.position()),
                    waypoint.note()))));
        }

        private void placePosition(Uid obstacle, Optional<Position> position) {
            Obstacle before = place(obstacle).obstacle();
            Obstacle after = before.withPosition(position);
            save.next(ThingBody.of(before), ThingBody.of(after)).ifPresent(revisions::add);
        }

        private void stationPosition(Uid station, Optional<Position> position) {
            Station before = placing.canyon().station(station).orElseThrow().station();
            Station after = new Station(
                    before.uid(),
                    before.obstacle(),
                    before.order(),
                    before.name(),
                    before.side(),
                    before.ropeNeeded(),
                    position,
                    before.exposure(),
                    before.prose());
            save.next(ThingBody.of(before), ThingBody.of(after)).ifPresent(revisions::add);
        }

        /** A new station comes last at its place. */
        private void newStation(Waypoint waypoint, Decision.NewStation decision) {
            Spot at = decision.at();
            if (at instanceof Spot.Known known) {
                refuseGone(known.obstacle());
            }
            String order = OrderKey.between(lastStation.computeIfAbsent(at, this::lastOrder), "");
            lastStation.put(at, order);
            revisions.add(save.first(ThingBody.of(new Station(
                    session.mint(),
                    Optional.ofNullable(uids.get(at)).orElseThrow(),
                    order,
                    decision.name(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.of(waypoint.position()),
                    Optional.empty(),
                    Prose.<StationText>none().with(StationText.NOTES, waypoint.note())))));
        }

        private String lastOrder(Spot at) {
            return at instanceof Spot.Known known
                    ? place(known.obstacle()).stations().stream()
                            .map(station -> station.station().order())
                            .reduce("", (one, other) -> other)
                    : "";
        }
    }
}
