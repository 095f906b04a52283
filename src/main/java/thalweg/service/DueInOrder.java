package thalweg.service;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.function.Predicate;
import thalweg.due.Due;
import thalweg.due.DueCount;
import thalweg.due.DuePart;
import thalweg.due.DueReason;
import thalweg.due.DueRules;
import thalweg.ledger.Uid;
import thalweg.logbook.Condition;
import thalweg.logbook.DueKey;
import thalweg.logbook.LookGroup;
import thalweg.logbook.PartRow;
import thalweg.storage.DueOrderStore;

/**
 * All parts that are due, the most urgent first, none of them held longer than it takes to use it.
 *
 * <p>The database has each group of parts in the order of the day on which they were seen, and textile in the order of its age;
 * they are merged by the day on which the rules have them due. Textile stands in two lines, by its look and by its age, and has
 * its turn in that in which it is due first.
 */
final class DueInOrder {

    /** Keys read at once of a group; the first few sooner. */
    private static final int PIECE = 200;

    private static final int FIRST_PIECE = 40;

    /** Parts read at once; the first few sooner. */
    private static final int PARTS = 500;

    private static final int FIRST_PARTS = 50;

    private final DueOrderStore store;
    private final DueRules rules;
    private final LocalDate today;
    private final int days;
    private final Map<LookGroup, LocalDate> seenBy = new LinkedHashMap<>();

    /**
     * @param days from today within which something is due, 0 or more
     */
    DueInOrder(DueOrderStore store, DueRules rules, LocalDate today, int days) {
        this.store = store;
        this.rules = rules;
        this.today = today;
        this.days = days;
        LookGroup.all().forEach(group -> seenBy.put(group, rules.seenBy(group, days)));
    }

    /** How much is due. */
    DueCount count() {
        return new DueCount(store.due(seenBy, rules.placedBy(days)), store.ageless(seenBy));
    }

    /**
     * Uses the parts that are due.
     *
     * @param wanted in which canyons
     * @param use until it says that it has enough
     */
    void each(Predicate<Uid> wanted, Predicate<DuePart> use) {
        PriorityQueue<DueLine> lines = new PriorityQueue<>(Comparator.comparing(DueLine::first, DueLine.IN_TURN));
        for (DueLine line : lines()) {
            if (!line.isOver()) {
                lines.add(line);
            }
        }
        List<DueLine.Next> taken = new ArrayList<>();
        int enough = FIRST_PARTS;
        while (!lines.isEmpty()) {
            DueLine line = lines.remove();
            DueLine.Next next = line.take();
            if (!line.isOver()) {
                lines.add(line);
            }
            if (wanted.test(next.key().canyon())) {
                taken.add(next);
            }
            if (taken.size() >= enough) {
                if (!used(taken, use)) {
                    return;
                }
                taken.clear();
                enough = PARTS;
            }
        }
        used(taken, use);
    }

    private List<DueLine> lines() {
        List<DueLine> lines = new ArrayList<>();
        seenBy.forEach((group, by) -> {
            if (group.condition() == Condition.SOUND) {
                lines.add(new DueLine(
                        after -> store.unseen(group, after, piece(after)), DueKey::seen, this::look, this::isFirst));
            }
            lines.add(new DueLine(
                    after -> store.seen(group, by, after, piece(after)), DueKey::seen, this::look, this::isFirst));
        });
        LocalDate placedBy = rules.placedBy(days);
        lines.add(new DueLine(
                after -> store.textile(placedBy, after, piece(after)), DueKey::since, this::textile, this::isFirst));
        return lines;
    }

    private static int piece(Optional<DueKey> after) {
        return after.isPresent() ? PIECE : FIRST_PIECE;
    }

    private Due look(DueKey key) {
        return rules.first(key.group(), key.seen());
    }

    private Due textile(DueKey key) {
        return rules.textile(key.since().orElseThrow());
    }

    /** Whether nothing else is due of a part sooner, so that it has its turn here. */
    private boolean isFirst(DueLine.Next next) {
        Due look = look(next.key());
        Due first = next.key()
                .since()
                .map(rules::textile)
                .filter(textile -> Due.BY_URGENCY.compare(textile, look) < 0)
                .orElse(look);
        return first.equals(next.due());
    }

    /** Uses textile of unknown age of which nothing else is due, along the lines, until that has enough. */
    void eachAgeless(Predicate<Uid> wanted, Predicate<DuePart> use) {
        Optional<DueKey> after = Optional.empty();
        while (true) {
            List<DueKey> keys = store.ageless(seenBy, after, PIECE);
            if (keys.isEmpty()) {
                return;
            }
            after = Optional.of(keys.get(keys.size() - 1));
            List<DueKey> here =
                    keys.stream().filter(key -> wanted.test(key.canyon())).toList();
            for (PartRow row : store.rows(here).values()) {
                List<Due> unknown = all(row).stream()
                        .filter(due -> due.reason() == DueReason.AGE_UNKNOWN)
                        .toList();
                if (!unknown.isEmpty() && !use.test(new DuePart(row, unknown))) {
                    return;
                }
            }
        }
    }

    private List<Due> all(PartRow row) {
        return rules.of(row.part(), row.state(), row.replacedSince(), row.exposure());
    }

    private boolean used(List<DueLine.Next> taken, Predicate<DuePart> use) {
        Map<Long, PartRow> rows =
                store.rows(taken.stream().map(DueLine.Next::key).toList());
        for (DueLine.Next next : taken) {
            Optional<PartRow> row = Optional.ofNullable(rows.get(next.key().part()));
            Optional<DuePart> part = row.flatMap(this::part);
            if (part.isPresent() && !use.test(part.get())) {
                return false;
            }
        }
        return true;
    }

    /** Empty where it was changed meanwhile and nothing is due of it any more. */
    private Optional<DuePart> part(PartRow row) {
        List<Due> now =
                all(row).stream().filter(due -> due.isDueWithin(today, days)).toList();
        return now.isEmpty() ? Optional.empty() : Optional.of(new DuePart(row, now));
    }
}
