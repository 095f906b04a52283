package thalweg.logbook;

import java.util.List;
import java.util.Optional;
import thalweg.ledger.Uid;

/**
 * What this database knows around a canyon and keeps to itself.
 *
 * @param trips the latest day first, those without a day before all
 * @param sheets that were given out, newest first
 * @param notes the keeper's own, about the canyon or something in it
 */
public record LocalRecord(List<Trip> trips, List<Entry<SheetGiven>> sheets, List<PrivateNote> notes) {

    /** Nothing. */
    public static final LocalRecord NOTHING = new LocalRecord(List.of(), List.of(), List.of());

    public LocalRecord {
        trips = List.copyOf(trips);
        sheets = List.copyOf(sheets);
        notes = List.copyOf(notes);
    }

    /** Whether there is nothing at all. */
    public boolean isEmpty() {
        return trips.isEmpty() && sheets.isEmpty() && notes.isEmpty();
    }

    /** The private note about that thing, if there is one. */
    public Optional<PrivateNote> noteAbout(Uid thing) {
        return notes.stream().filter(note -> note.about().equals(thing)).findFirst();
    }
}
