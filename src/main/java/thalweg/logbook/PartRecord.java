package thalweg.logbook;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import thalweg.route.Part;
import thalweg.route.PartialDate;

/**
 * A part with all that was found on it.
 *
 * @param part as it is entered
 * @param state what follows from the inspections that count
 * @param inspections all of them, those that no longer count too, newest first; those of one day by when they were written down, ties by name
 */
public record PartRecord(Part part, PartState state, List<Entry<Inspection>> inspections) {

    public PartRecord {
        inspections = List.copyOf(inspections);
    }

    /** The part with its inspections put in order and its state worked out. */
    public static PartRecord of(Part part, List<Entry<Inspection>> inspections) {
        List<Entry<Inspection>> newestFirst = Amendments.settle(inspections).stream()
                .sorted(Comparator.comparing((Entry<Inspection> entry) ->
                                entry.content().on().latest())
                        .thenComparing(Entry::at)
                        .reversed()
                        .thenComparing(Entry::uid))
                .toList();
        PartState state = ConditionRules.stateOf(Amendments.counting(newestFirst));
        return new PartRecord(part, state, newestFirst);
    }

    /** The inspections that count, newest first. */
    public List<Inspection> counting() {
        return Amendments.counting(inspections);
    }

    /** When the part was replaced since it was placed, as far as anybody can tell. */
    public Optional<PartialDate> replacedSince() {
        return PartRow.since(part, lastReplaced());
    }

    /** When an inspection last said that it was replaced. */
    public Optional<PartialDate> lastReplaced() {
        return counting().stream()
                .filter(inspection -> inspection.work().contains(Work.REPLACED))
                .map(Inspection::on)
                .findFirst();
    }
}
