package thalweg.logbook;

import static thalweg.route.PartialDate.BY_LAST_DAY;

import java.time.LocalDate;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import thalweg.route.PartialDate;

/** Derives a part's condition from its inspections; the order in which they are given never matters. */
public final class ConditionRules {

    private ConditionRules() {}

    /**
     * The state of a part: as it was left when it was really seen last.
     *
     * <p>Entries of one day have no order among themselves, and neither has a month or a year with a day inside it. So
     * every entry counts that may be the last: the worst of them is shown, and the state says if they disagree. A month
     * or a year counts as its last day, so that what is shown never looks older than it may be.
     *
     * @param inspections of one part, in any order
     */
    public static PartState stateOf(Collection<Inspection> inspections) {
        List<Inspection> lastSeen =
                perhapsLast(inspections.stream().filter(Inspection::wasSeen).toList());
        Optional<Condition> worst = lastSeen.stream()
                .flatMap(inspection -> inspection.afterwards().stream())
                .reduce(Condition::worse);
        boolean disagree =
                lastSeen.stream().map(Inspection::afterwards).distinct().count() > 1;
        Optional<PartialDate> seenOn = latest(lastSeen.stream()
                .filter(inspection -> inspection.afterwards().equals(worst))
                .toList());
        Optional<PartialDate> latestSeen = latest(lastSeen);
        Optional<PartialDate> notSeenSince = latest(inspections.stream()
                        .filter(inspection -> !inspection.wasSeen())
                        .toList())
                .filter(date -> latestSeen.isEmpty() || BY_LAST_DAY.compare(date, latestSeen.get()) > 0);
        return new PartState(worst, seenOn, disagree, notSeenSince, inspections.size());
    }

    /** Those of which none is surely followed by another: for exact days, all of the latest day. */
    private static List<Inspection> perhapsLast(List<Inspection> seen) {
        LocalDate surelySeen = seen.stream()
                .map(inspection -> inspection.on().earliest())
                .max(Comparator.naturalOrder())
                .orElse(LocalDate.MIN);
        return seen.stream()
                .filter(inspection -> !inspection.on().latest().isBefore(surelySeen))
                .toList();
    }

    private static Optional<PartialDate> latest(List<Inspection> inspections) {
        return inspections.stream().map(Inspection::on).max(BY_LAST_DAY);
    }
}
