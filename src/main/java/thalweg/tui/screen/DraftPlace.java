package thalweg.tui.screen;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import thalweg.amend.Located;
import thalweg.draft.DraftKey;
import thalweg.ledger.OrderKey;
import thalweg.ledger.Uid;
import thalweg.logbook.AnchorRecord;
import thalweg.logbook.CanyonRecord;
import thalweg.logbook.Entry;
import thalweg.logbook.LineRecord;
import thalweg.logbook.PartRecord;
import thalweg.logbook.StationRecord;
import thalweg.logbook.Trip;
import thalweg.logbook.TripInCanyon;
import thalweg.rig.KeptRig;

/**
 * Finds the form of a draft in the records as they are now.
 *
 * @param told the canyon around what the draft is about
 */
record DraftPlace(Told.CanyonLoaded told) {

    /**
     * The form to open.
     *
     * @param surrounded what is around what the draft is about
     * @param title of the draft, where the form has no other words for what it is about
     * @return empty where what it is about is out of use
     */
    static Optional<Go> of(Told.Surrounded surrounded, String title) {
        DraftKey key = surrounded.key();
        if (key.about().isEmpty()) {
            return switch (key.kind()) {
                case CANYON -> Optional.of(new Go.EditCanyon(surrounded.spare(), Optional.empty()));
                case WAYPOINTS -> Optional.of(new Go.ReadWaypoints(Optional.empty(), surrounded.spare()));
                default -> Optional.empty();
            };
        }
        return surrounded
                .canyon()
                .flatMap(told -> new DraftPlace(told).form(key, key.about().get(), title));
    }

    private CanyonRecord canyon() {
        return told.record();
    }

    private Optional<Go> form(DraftKey key, Uid about, String title) {
        return switch (key.kind()) {
            case CANYON -> Optional.of(new Go.EditCanyon(about, Optional.of(canyon().canyon())));
            case WAYPOINTS -> Optional.of(new Go.ReadWaypoints(Optional.of(canyon()), told.spare()));
            case SHEET -> Optional.of(sheet(about));
            case OBSTACLE -> key.isNew() ? Optional.of(newObstacle()) : obstacle(about);
            case STATION -> key.isNew() ? newStation(about) : station(about);
            case ANCHOR -> key.isNew() ? newAnchor(about) : anchor(about);
            case PART -> key.isNew() ? newPart(about) : part(about);
            case VISIT ->
                canyon().station(about).map(at -> new Go.Inspect(at, canyon().countingRounds(), Optional.empty()));
            case DOWN ->
                key.isNew()
                        ? Optional.of(new Go.GoDown(canyon()))
                        : trip(about).map(trip -> new Go.GoDown(canyon(), Optional.of(trip)));
            case INSPECTION -> key.isNew() ? replaced(about) : inspection(about);
            case NOTE -> key.isNew() ? newNote(about) : note(about);
            case ROUND -> round(key, about);
            case TRIP ->
                key.isNew()
                        ? Optional.of(new Go.EditTrip(told.spare(), canyon().named(), Optional.empty()))
                        : trip(about).map(trip -> new Go.EditTrip(about, canyon().named(), Optional.of(trip)));
            case TAKE_OUT_TRIP -> trip(about).map(trip -> new Go.TakeOutTrip(new TripInCanyon(trip, canyon().named())));
            case TAKE_OUT -> Located.in(canyon(), about).map(at -> new Go.TakeOut(at.thing(), at.contents()));
            case PRIVATE_NOTE ->
                Located.in(canyon(), about)
                        .map(at -> new Go.EditPrivateNote(
                                about, at.thing().label(), told.local().notesAbout(about)));
            case WITHDRAW -> Optional.of(new Go.Withdraw(about, title));
            case RIG -> key.isNew() ? rig(about) : rigAgain(about);
        };
    }

    private static <T> String after(List<T> within, Function<T, String> order) {
        String last = within.stream().map(order).reduce("", (one, other) -> other);
        return OrderKey.between(last, "");
    }

    /** Of the canyon, or of one of its stations. */
    private Go sheet(Uid about) {
        Uid canyon = canyon().canyon().uid();
        return canyon().station(about)
                .map(at -> new Go.WriteSheet(
                        canyon, at.station().name(), Optional.of(about), told.local(), Optional.empty()))
                .orElseGet(() -> new Go.WriteSheet(canyon, canyon().canyon().name(), told.local()));
    }

    private Go newObstacle() {
        String order = after(canyon().line(), place -> place.obstacle().order());
        return new Go.EditObstacle(told.spare(), canyon().canyon().uid(), order, Optional.empty());
    }

    private Optional<Go> obstacle(Uid uid) {
        return canyon().place(uid)
                .map(LineRecord::obstacle)
                .map(obstacle ->
                        new Go.EditObstacle(uid, canyon().canyon().uid(), obstacle.order(), Optional.of(obstacle)));
    }

    private Optional<Go> newStation(Uid obstacle) {
        return canyon().place(obstacle)
                .map(place -> new Go.EditStation(
                        told.spare(),
                        obstacle,
                        after(place.stations(), one -> one.station().order()),
                        Optional.empty()));
    }

    private Optional<Go> station(Uid uid) {
        return canyon().station(uid)
                .map(StationRecord::station)
                .map(station -> new Go.EditStation(uid, station.obstacle(), station.order(), Optional.of(station)));
    }

    private Optional<Go> newAnchor(Uid station) {
        return canyon().station(station)
                .map(at -> new Go.EditAnchor(
                        told.spare(),
                        station,
                        after(at.anchors(), one -> one.anchor().order()),
                        Optional.empty()));
    }

    private Optional<AnchorRecord> anchorRecord(Uid uid) {
        return canyon().stations().stream()
                .flatMap(station -> station.anchors().stream())
                .filter(anchor -> anchor.anchor().uid().equals(uid))
                .findFirst();
    }

    private Optional<Go> anchor(Uid uid) {
        return anchorRecord(uid)
                .map(AnchorRecord::anchor)
                .map(anchor -> new Go.EditAnchor(uid, anchor.station(), anchor.order(), Optional.of(anchor)));
    }

    private Optional<Go> newPart(Uid anchor) {
        return anchorRecord(anchor)
                .map(at -> new Go.EditPart(
                        told.spare(),
                        anchor,
                        after(at.parts(), one -> one.part().order()),
                        Optional.empty()));
    }

    private Optional<PartRecord> partRecord(Uid uid) {
        return canyon().stations().stream()
                .flatMap(station -> station.part(uid).stream())
                .findFirst();
    }

    private Optional<Go> part(Uid uid) {
        return partRecord(uid)
                .map(found ->
                        new Go.EditPart(uid, found.part().anchor(), found.part().order(), Optional.of(found.part())));
    }

    private Optional<Go> replaced(Uid uid) {
        return partRecord(uid).map(part -> new Go.Replace(part, canyon().countingRounds()));
    }

    private Optional<Go> inspection(Uid entry) {
        return canyon().stations().stream()
                .flatMap(station -> station.parts().stream())
                .flatMap(part -> named(part.inspections(), entry).stream()
                        .map(wrong -> (Go) new Go.CorrectInspection(part, wrong, canyon().countingRounds())))
                .findFirst();
    }

    private static <T> Optional<Entry<T>> named(List<Entry<T>> entries, Uid uid) {
        return entries.stream()
                .filter(entry -> entry.uid().equals(uid) && entry.counts())
                .findFirst();
    }

    private Optional<Go> newNote(Uid station) {
        return canyon().station(station)
                .map(at -> new Go.WriteNote(station, at.station().name()));
    }

    private Optional<Go> note(Uid entry) {
        return canyon().stations().stream()
                .flatMap(station -> named(station.notes(), entry).stream()
                        .map(wrong -> (Go) new Go.CorrectNote(station.station().name(), wrong)))
                .findFirst();
    }

    private Optional<Go> round(DraftKey key, Uid about) {
        String name = canyon().canyon().name();
        if (key.isNew()) {
            return Optional.of(new Go.EditRound(about, name, Optional.empty()));
        }
        return named(canyon().rounds(), about)
                .map(wrong -> new Go.EditRound(canyon().canyon().uid(), name, Optional.of(wrong)));
    }

    private Optional<Trip> trip(Uid uid) {
        return told.local().trips().stream()
                .filter(trip -> trip.uid().equals(uid))
                .findFirst();
    }

    private Optional<Go> rig(Uid anchor) {
        return anchorRecord(anchor)
                .flatMap(at -> canyon().station(at.anchor().station()).map(station -> new Go.Rig(station, at)));
    }

    private Optional<Go> rigAgain(Uid analysis) {
        Optional<KeptRig> kept = Optional.ofNullable(told.rigs().get(analysis));
        return canyon().stations().stream()
                .filter(station -> named(station.analyses(), analysis).isPresent())
                .filter(station -> kept.isPresent() && !station.anchors().isEmpty())
                .map(station -> (Go)
                        new Go.Rig(station, station.anchors().get(0), kept.map(KeptRig::input), Optional.of(analysis)))
                .findFirst();
    }
}
