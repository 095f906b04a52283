package thalweg.logbook;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import thalweg.ledger.Uid;
import thalweg.route.PartialDate;
import thalweg.route.Station;

/**
 * A station with all that is known of it.
 *
 * @param station as it is entered
 * @param anchors in order
 * @param notes rigging notes, those that no longer count too, newest first
 * @param analyses the same
 */
public record StationRecord(
        Station station,
        List<AnchorRecord> anchors,
        List<Entry<RiggingNote>> notes,
        List<Entry<RigAnalysis>> analyses) {

    public StationRecord {
        anchors = List.copyOf(anchors);
        notes = Amendments.settle(notes);
        analyses = Amendments.settle(analyses);
    }

    /** The rigging notes that count, newest first. */
    public List<Entry<RiggingNote>> countingNotes() {
        return notes.stream().filter(Entry::counts).toList();
    }

    /** The analyses that count, newest first. */
    public List<Entry<RigAnalysis>> countingAnalyses() {
        return analyses.stream().filter(Entry::counts).toList();
    }

    /** Whether parts have changed since an analysis that counts was made. */
    public boolean hasOldAnalysis() {
        return countingAnalyses().stream().anyMatch(entry -> isOld(entry.content()));
    }

    /** Whether parts have changed since an analysis of this station was made. */
    public boolean isOld(RigAnalysis analysis) {
        return !analysis.inventory().changesTo(inventory()).isEmpty();
    }

    /** Every part of every anchor. */
    public List<PartRecord> parts() {
        return anchors.stream().flatMap(anchor -> anchor.parts().stream()).toList();
    }

    /** The part of that name, if it is here. */
    public Optional<PartRecord> part(Uid uid) {
        return parts().stream().filter(part -> part.part().uid().equals(uid)).findFirst();
    }

    /** How all its parts stand together. */
    public Standing standing() {
        return Standing.of(parts());
    }

    /** Whether entries on some part disagree. */
    public boolean hasContradiction() {
        return parts().stream().anyMatch(part -> part.state().contradictory());
    }

    /** The dates on which parts were last seen, one a part that has been seen. */
    public Stream<PartialDate> lastSeen() {
        return parts().stream().flatMap(part -> part.state().seenOn().stream());
    }

    /**
     * When the part that was longest not seen was seen last, of those that were ever seen: how old the news is. Nobody
     * looks for what is gone, so that counts only where all of it is.
     */
    public Optional<PartialDate> oldestLook() {
        return parts().stream()
                .map(PartRecord::state)
                .filter(state -> !state.condition().equals(Optional.of(Condition.GONE)))
                .flatMap(state -> state.seenOn().stream())
                .min(PartialDate.BY_LAST_DAY)
                .or(() -> lastSeen().min(PartialDate.BY_LAST_DAY));
    }

    /** What the inventory is like now, to hold an analysis against. */
    public InventoryFingerprint inventory() {
        return InventoryFingerprint.of(parts());
    }
}
