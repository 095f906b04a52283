package thalweg.timeline;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import thalweg.logbook.Inspection;
import thalweg.logbook.PartRecord;
import thalweg.logbook.PartState;
import thalweg.route.Part;
import thalweg.route.PartialDate;
import thalweg.text.Phrases;

/**
 * One part over the years.
 *
 * @param part as it is entered
 * @param state in which it is, as far as anybody knows
 * @param inspections those that count, by the last day they can mean, oldest first; may be empty
 */
public record PartLine(Part part, PartState state, List<Inspection> inspections) {

    public PartLine {
        inspections = List.copyOf(inspections);
    }

    static PartLine of(PartRecord record) {
        List<Inspection> oldestFirst = record.counting().stream()
                .sorted(Comparator.comparing(Inspection::on, PartialDate.BY_LAST_DAY))
                .toList();
        return new PartLine(record.part(), record.state(), oldestFirst);
    }

    /** All that was found on it, in words. */
    public String told(Phrases phrases) {
        return new TimelineWords(phrases).told(this);
    }

    /** The first day any of its inspections can mean. */
    Optional<LocalDate> firstLook() {
        return inspections.stream()
                .map(inspection -> inspection.on().earliest())
                .min(Comparator.naturalOrder());
    }

    /** The first day on which it may have been there: as placed or, where nobody entered that, as first seen. */
    Optional<LocalDate> begins() {
        Optional<LocalDate> seen = inspections.stream()
                .filter(Inspection::wasSeen)
                .map(inspection -> inspection.on().earliest())
                .min(Comparator.naturalOrder());
        return Stream.concat(part.placed().map(PartialDate::earliest).stream(), seen.stream())
                .min(Comparator.naturalOrder());
    }
}
