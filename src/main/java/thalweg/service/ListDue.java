package thalweg.service;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import thalweg.due.Due;
import thalweg.due.DueCount;
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
     * @param most how many are listed at the most, 1 or more
     */
    public FoundDue within(PartFinding finding, CanyonFilter canyons, int days, int most) {
        return finding.equals(PartFinding.ALL) && canyons.equals(CanyonFilter.NONE)
                ? inOrder(days, most)
                : within(finding, Optional.empty(), in(canyons), days, most);
    }

    private FoundDue inOrder(int days, int most) {
        DueInOrder order = order(days);
        List<DuePart> due = new ArrayList<>();
        List<DuePart> unknownAge = new ArrayList<>();
        order.each(canyon -> true, part -> due.add(part) && due.size() < most);
        int room = most - due.size();
        if (room > 0) {
            order.eachAgeless(canyon -> true, part -> unknownAge.add(part) && unknownAge.size() < room);
        }
        boolean whole = unknownAge.size() < room;
        boolean fits = !due.isEmpty()
                || !unknownAge.isEmpty()
                || session.due().any(PartFinding.ALL, Optional.empty(), canyon -> true);
        Optional<DueCount> count = whole ? Optional.of(new DueCount(due.size(), unknownAge.size())) : Optional.empty();
        return new FoundDue(due, unknownAge, count, fits);
    }

    /** How much of all there is is due within some days. */
    public DueCount count(int days) {
        return order(days).count();
    }

    private DueInOrder order(int days) {
        return new DueInOrder(session.dueInOrder(), rules, today, days);
    }

    /**
     * Uses everything that is due within some days, the most urgent first, as it is read: where no words are looked for, none
     * of it is kept.
     *
     * @param days from today, 0 or more
     * @param due uses what is due
     * @param unknownAge uses textile of unknown age of which nothing else is due, after that
     * @return how much there was; empty where no part is looked for, due or not
     */
    public Optional<DueCount> each(
            PartFinding finding, CanyonFilter canyons, int days, Consumer<DuePart> due, Consumer<DuePart> unknownAge) {
        Predicate<Uid> wanted = in(canyons);
        if (!finding.equals(PartFinding.ALL)) {
            FoundDue found = within(finding, Optional.empty(), wanted, days, Integer.MAX_VALUE);
            found.parts().forEach(due);
            found.unknownAge().forEach(unknownAge);
            return found.fits() ? found.count() : Optional.empty();
        }
        DueInOrder order = order(days);
        int[] counts = new int[2];
        order.each(wanted, part -> used(part, due, counts, 0));
        order.eachAgeless(wanted, part -> used(part, unknownAge, counts, 1));
        boolean fits = counts[0] + counts[1] > 0 || session.due().any(finding, Optional.empty(), wanted);
        return fits ? Optional.of(new DueCount(counts[0], counts[1])) : Optional.empty();
    }

    private static boolean used(DuePart part, Consumer<DuePart> use, int[] counts, int which) {
        use.accept(part);
        counts[which]++;
        return true;
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
        return new FoundDue(
                due.parts(), unknownAge.parts(), Optional.of(new DueCount(due.count(), unknownAge.count())), fits);
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

    /** The first line of parts that are due as CSV for a spreadsheet. */
    public static String csvHead() {
        return PartsCsv.dueHead();
    }

    /** A part that is due as a line of it. */
    public static String csv(DuePart part, LocalDate today) {
        return PartsCsv.due(part, today);
    }
}
