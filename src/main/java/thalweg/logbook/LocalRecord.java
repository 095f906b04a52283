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
        sheets = Amendments.settle(sheets);
        notes = List.copyOf(notes);
    }

    /** The sheets that were given out and not withdrawn, newest first. */
    public List<Entry<SheetGiven>> countingSheets() {
        return sheets.stream().filter(Entry::counts).toList();
    }

    /** Whether there is nothing at all. */
    public boolean isEmpty() {
        return trips.isEmpty() && sheets.isEmpty() && notes.isEmpty();
    }

    /** What the private notes about that thing say; one note is usual, but an import may bring another. */
    public Optional<String> noteAbout(Uid thing) {
        return notes.stream()
                .filter(note -> note.about().equals(thing))
                .map(PrivateNote::text)
                .reduce((one, other) -> one + "\n\n" + other);
    }

    /** The private notes about that thing. */
    public List<PrivateNote> notesAbout(Uid thing) {
        return notes.stream().filter(note -> note.about().equals(thing)).toList();
    }
}
