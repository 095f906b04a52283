package thalweg.service;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
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
        return within(finding, in(canyons), days);
    }

    private FoundDue within(PartFinding finding, Predicate<PartRow> wanted, int days) {
        List<DuePart> due = new ArrayList<>();
        List<DuePart> unknownAge = new ArrayList<>();
        int looked = 0;
        for (PartRow row : session.parts().parts(finding, Integer.MAX_VALUE)) {
            if (!wanted.test(row)) {
                continue;
            }
            looked++;
            List<Due> all = rules.of(row.part(), row.state(), row.replacedSince(), row.exposure());
            List<Due> now =
                    all.stream().filter(one -> one.isDueWithin(today, days)).toList();
            List<Due> unknown = all.stream()
                    .filter(one -> one.reason() == DueReason.AGE_UNKNOWN)
                    .toList();
            if (!now.isEmpty()) {
                due.add(new DuePart(row, now));
            } else if (!unknown.isEmpty()) {
                unknownAge.add(new DuePart(row, unknown));
            }
        }
        due.sort(Comparator.comparing(DuePart::first, Due.BY_URGENCY));
        return new FoundDue(due, unknownAge, looked);
    }

    /** The same for one canyon. */
    public FoundDue within(PartFinding finding, Uid canyon, int days) {
        return within(finding, row -> row.canyon().equals(canyon), days);
    }

    private Predicate<PartRow> in(CanyonFilter canyons) {
        if (canyons.equals(CanyonFilter.NONE)) {
            return row -> true;
        }
        Set<Uid> wanted = new ListCanyons(session)
                .found(new Finding("", canyons)).canyons().stream()
                        .map(found -> found.row().uid())
                        .collect(Collectors.toSet());
        return row -> wanted.contains(row.canyon());
    }

    /** Parts that are due as CSV for a spreadsheet. */
    public static String csv(List<DuePart> parts, LocalDate today) {
        return PartsCsv.due(parts, today);
    }
}
