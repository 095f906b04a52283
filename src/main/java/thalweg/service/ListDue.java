package thalweg.service;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import thalweg.due.Due;
import thalweg.due.DuePart;
import thalweg.due.DueReason;
import thalweg.due.DueRules;
import thalweg.due.FoundDue;
import thalweg.exchange.csv.PartsCsv;
import thalweg.ledger.Uid;
import thalweg.logbook.CanyonFilter;
import thalweg.logbook.Finding;
import thalweg.logbook.PartFinding;
import thalweg.logbook.PartRow;
import thalweg.settings.Settings;

/** Which parts are due, over all canyons. */
public final class ListDue {

    private final Session session;
    private final DueRules rules;
    private final LocalDate today;

    /**
     * @param settings whose figures hold
     */
    public ListDue(Session session, Settings settings) {
        this.session = session;
        this.today = session.today();
        this.rules = new DueRules(settings, today);
    }

    /**
     * What is due within some days among the parts that are looked for.
     *
     * @param canyons which canyons, if not all
     * @param days from today, 0 or more
     */
    public FoundDue within(PartFinding finding, CanyonFilter canyons, int days) {
        return within(finding, canyons, days, Integer.MAX_VALUE);
    }

    /**
     * The same, but the most urgent alone.
     *
     * @param most how many are listed at the most, 1 or more; all are counted
     */
    public FoundDue within(PartFinding finding, CanyonFilter canyons, int days, int most) {
        return within(finding, Optional.empty(), in(canyons), days, most);
    }

    /** The same for one canyon. */
    public FoundDue within(PartFinding finding, Uid canyon, int days, int most) {
        return within(finding, Optional.of(canyon), canyon::equals, days, most);
    }

    private FoundDue within(PartFinding finding, Optional<Uid> canyon, Predicate<Uid> wanted, int days, int most) {
        MostUrgent due = new MostUrgent(most);
        MostUrgent unknownAge = new MostUrgent(most);
        session.due().each(finding, canyon, rules.candidates(days), row -> {
            if (wanted.test(row.canyon())) {
                sort(row, days, due, unknownAge);
            }
        });
        boolean fits = due.count() + unknownAge.count() > 0 || session.due().any(finding, canyon, wanted);
        return new FoundDue(due.parts(), unknownAge.parts(), due.count(), unknownAge.count(), fits);
    }

    private void sort(PartRow row, int days, MostUrgent due, MostUrgent unknownAge) {
        List<Due> all = rules.of(row.part(), row.state(), row.replacedSince(), row.exposure());
        List<Due> now = all.stream().filter(one -> one.isDueWithin(today, days)).toList();
        List<Due> unknown = all.stream()
                .filter(one -> one.reason() == DueReason.AGE_UNKNOWN)
                .toList();
        if (!now.isEmpty()) {
            due.add(new DuePart(row, now));
        } else if (!unknown.isEmpty()) {
            unknownAge.add(new DuePart(row, unknown));
        }
    }

    private Predicate<Uid> in(CanyonFilter canyons) {
        if (canyons.equals(CanyonFilter.NONE)) {
            return canyon -> true;
        }
        Set<Uid> wanted = new ListCanyons(session)
                .found(new Finding("", canyons)).canyons().stream()
                        .map(found -> found.row().uid())
                        .collect(Collectors.toSet());
        return wanted::contains;
    }

    /** Parts that are due as CSV for a spreadsheet. */
    public static String csv(List<DuePart> parts, LocalDate today) {
        return PartsCsv.due(parts, today);
    }
}
