package thalweg.logbook;

import static thalweg.route.PartialDate.BY_LAST_DAY;

import java.time.temporal.ChronoUnit;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import thalweg.route.PartialDate;

/** Derives a part's condition from its inspections; the order in which they are given never matters. */
public final class ConditionRules {

    /** Within so many days a part that looks better without any work was more likely judged otherwise; our choice [days]. */
    static final int SAME_STATE_DAYS = 30;

    private ConditionRules() {}

    /**
     * The state of a part: as it was left when it was really seen last.
     *
     * <p>Entries of one day have no order among themselves, and neither has a month or a year with a day inside it. So
     * every entry counts that may be the last: the worst of them is shown, and the state says if they disagree. A month
     * or a year counts as its last day, so that what is shown never looks older than it may be.
     *
     * <p>A part gets worse by itself, but never better. So an entry also still counts where the later ones find the part
     * better within {@value #SAME_STATE_DAYS} days and nobody worked on it: somebody was mistaken. A part that was replaced
     * starts anew.
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

    /** Those that no other takes the place of. */
    private static List<Inspection> perhapsLast(List<Inspection> seen) {
        return seen.stream()
                .filter(one -> seen.stream().noneMatch(later -> replaces(later, one)))
                .toList();
    }

    private static boolean replaces(Inspection later, Inspection one) {
        long days = ChronoUnit.DAYS.between(one.on().latest(), later.on().earliest());
        if (days <= 0) {
            return false;
        }
        Condition before = one.afterwards().orElseThrow();
        return days > SAME_STATE_DAYS
                || !later.work().isEmpty()
                || !before.isWorseThan(later.found().or(later::left).orElseThrow());
    }

    private static Optional<PartialDate> latest(List<Inspection> inspections) {
        return inspections.stream().map(Inspection::on).max(BY_LAST_DAY);
    }
}
