package thalweg.service;

import java.util.List;
import java.util.Optional;
import thalweg.body.ThingBody;
import thalweg.fault.InputException;
import thalweg.fault.Sentence;
import thalweg.ledger.Uid;
import thalweg.logbook.PrivateNote;
import thalweg.logbook.Trip;

/** Keeps what stays with this database: trips, and the keeper's own notes. */
public final class KeepLocal {

    private static final String EMPTIED = "emptied";

    private final Session session;

    public KeepLocal(Session session) {
        this.session = session;
    }

    /**
     * Enters a trip, or its new state.
     *
     * @param before the state from which the change was made; empty for a new trip
     * @throws InputException when its day is not believed
     * @throws thalweg.fault.ChangedMeanwhileException when it no longer is as it was before
     */
    public void trip(Optional<Trip> before, Trip after) {
        after.on()
                .ifPresent(day -> Trip.doubt(after.state(), day, session.today())
                        .ifPresent(why -> {
                            throw new InputException(Sentence.of("The day {0} {1}.", day.print(), why));
                        }));
        SaveThing save = new SaveThing(session);
        if (before.isPresent()) {
            save.changed(ThingBody.of(before.get()), ThingBody.of(after));
        } else {
            save.anew(ThingBody.of(after));
        }
    }

    /**
     * Takes a trip out of use.
     *
     * @throws thalweg.fault.ChangedMeanwhileException when it no longer is as it was
     */
    public void remove(Trip trip, String reason) {
        new SaveThing(session).removed(ThingBody.of(trip), reason);
    }

    /**
     * Keeps one private note about a thing. Where an import had brought a second one, its words stand in the first from
     * now on.
     *
     * @param about a canyon, a place on the line or a station
     * @param before the notes about it as they were shown
     * @param text what is to stand there; blank takes the note away
     * @throws thalweg.fault.ChangedMeanwhileException when a note no longer is as it was before
     */
    public void note(Uid about, List<PrivateNote> before, String text) {
        SaveThing save = new SaveThing(session);
        if (text.isBlank()) {
            before.forEach(note -> save.removed(ThingBody.of(note), EMPTIED));
            return;
        }
        if (before.isEmpty()) {
            save.anew(ThingBody.of(new PrivateNote(session.mint(), about, text)));
            return;
        }
        PrivateNote kept = before.get(0);
        save.changed(ThingBody.of(kept), ThingBody.of(new PrivateNote(kept.uid(), about, text)));
        before.stream().skip(1).forEach(note -> save.removed(ThingBody.of(note), EMPTIED));
    }
}
