package thalweg.storage;

import java.sql.SQLException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import thalweg.body.FactType;
import thalweg.body.ThingBody;
import thalweg.body.ThingType;
import thalweg.body.WithdrawalBody;
import thalweg.ledger.Fact;
import thalweg.ledger.LedgerPlace;
import thalweg.ledger.LedgerText;
import thalweg.ledger.Revision;
import thalweg.ledger.Uid;
import thalweg.logbook.CanyonRecord;

/**
 * Reads a canyon as it was when the ledger had been written so far. What counted then is worked out by the same rules as
 * what counts now: the entries of that time are shown again in a database in memory.
 */
public final class EarlierStore {

    private static final String PLACE = """
            select coalesce((select max(key) from revision), 0), coalesce((select max(key) from fact), 0)
            """;

    /** As the latest state of a thing is found, among what was there then. */
    private static final String HEAD = """
            select r.canonical
              from revision r
             where r.thing = ?1
               and r.key <= ?2
               and not exists (select 1
                                 from revision q
                                cross join revision_parent p on p.revision = q.key and p.parent = r.hash
                                where q.thing = r.thing
                                  and q.key <= ?2
                                  and q.gen > r.gen)
             order by r.gen desc, r.hash
             limit 1
            """;

    /** Everything else stands where it stood then. */
    private static final String CHANGED_SINCE = """
            select distinct thing
              from revision
             where key > ?
               and gen > 1
            """;

    private static final String WITHIN = """
            select t.uid
              from %s t
              join %s q on q.key = t.parent
             where q.uid = ?
            """;

    private static final String FACTS = """
            select canonical
              from fact
             where about = ?
               and key <= ?
             order by key
            """;

    private static final List<ThingType> IN_CANYON =
            List.of(ThingType.OBSTACLE, ThingType.STATION, ThingType.ANCHOR, ThingType.PART);

    private final Database database;

    /**
     * @param database whose ledger it is
     */
    public EarlierStore(Database database) {
        this.database = database;
    }

    /** How far the ledger has been written. */
    public LedgerPlace place() {
        return database.read(sql -> sql.one(PLACE, row -> new LedgerPlace(row.getLong(1), row.getLong(2))))
                .orElseThrow();
    }

    /** The canyon as it was then; empty where it was not there, or was out of use. */
    public Optional<CanyonRecord> canyon(Uid canyon, LedgerPlace then) {
        List<Revision> things = new ArrayList<>();
        List<Fact> facts = new ArrayList<>();
        database.read(sql -> {
            things.addAll(new Reading(sql, then).in(canyon));
            for (Revision thing : things) {
                facts.addAll(about(sql, thing.thing(), then));
            }
            return things;
        });
        try (Database memory = Database.inMemory()) {
            memory.write(sql -> {
                Derived derived = new Derived(sql);
                for (Revision thing : things) {
                    derived.show(thing);
                }
                for (Fact fact : facts) {
                    derived.show(fact);
                }
                return things;
            });
            return new RecordStore(memory).canyon(canyon);
        }
    }

    private static List<Fact> about(Sql sql, Uid thing, LedgerPlace then) throws SQLException {
        List<Fact> facts = new ArrayList<>();
        for (String text : sql.all(FACTS, row -> row.getString(1), thing.bytes(), then.facts())) {
            Optional<Fact> fact = LedgerText.fact(text).filter(EarlierStore::isShared);
            if (fact.isPresent()) {
                facts.add(fact.get());
                facts.addAll(about(sql, fact.get().uid(), then));
            }
        }
        return facts;
    }

    private static boolean isShared(Fact fact) {
        return fact.type().equals(WithdrawalBody.TYPE)
                || FactType.of(fact.type()).filter(type -> !type.isLocal()).isPresent();
    }

    /** One reading of the ledger as it was then. */
    private record Reading(Sql sql, LedgerPlace then) {

        /** The canyon and everything that was in it, parents before what is in them. */
        List<Revision> in(Uid canyon) throws SQLException {
            Map<Uid, Revision> known = new HashMap<>();
            Optional<Revision> itself = head(canyon);
            if (itself.isEmpty()) {
                return List.of();
            }
            known.put(canyon, itself.get());
            take(canyon, known);
            List<Revision> movedOrChanged = new ArrayList<>();
            for (Uid thing : sql.all(CHANGED_SINCE, row -> Uid.ofBytes(row.getBytes(1)), then.revisions())) {
                if (!known.containsKey(thing)) {
                    head(thing).filter(Reading::isInCanyon).ifPresent(movedOrChanged::add);
                }
            }
            takeMoved(movedOrChanged, known);
            return ordered(canyon, known);
        }

        private static boolean isInCanyon(Revision revision) {
            return ThingType.of(revision.type()).filter(IN_CANYON::contains).isPresent();
        }

        private Optional<Revision> head(Uid thing) throws SQLException {
            return sql.one(HEAD, row -> row.getString(1), thing.bytes(), then.revisions())
                    .flatMap(LedgerText::revision);
        }

        /** What is in a thing now, in use or not, as it was then. */
        private void take(Uid thing, Map<Uid, Revision> known) throws SQLException {
            Deque<Uid> open = new ArrayDeque<>(List.of(thing));
            while (!open.isEmpty()) {
                Uid parent = open.remove();
                for (ThingType type : IN_CANYON) {
                    String query = WITHIN.formatted(type.word(), type.parentKey());
                    for (Uid child : sql.all(query, row -> Uid.ofBytes(row.getBytes(1)), (Object) parent.bytes())) {
                        head(child).ifPresent(then -> known.put(child, then));
                        open.add(child);
                    }
                }
            }
        }

        /** What stands in another canyon now and was in this one then, with what is in it. */
        private void takeMoved(List<Revision> candidates, Map<Uid, Revision> known) throws SQLException {
            List<Revision> left = new ArrayList<>(candidates);
            boolean found = true;
            while (found) {
                found = false;
                for (Revision one : List.copyOf(left)) {
                    if (parent(one).filter(known::containsKey).isPresent()) {
                        known.put(one.thing(), one);
                        take(one.thing(), known);
                        left.remove(one);
                        found = true;
                    }
                }
            }
        }

        private static Optional<Uid> parent(Revision revision) {
            return ThingType.of(revision.type()).flatMap(type -> ThingBody.parent(type, revision.body()));
        }

        /** Without what stood elsewhere then. */
        private static List<Revision> ordered(Uid canyon, Map<Uid, Revision> known) {
            List<Revision> ordered = new ArrayList<>();
            Set<Uid> taken = new HashSet<>();
            List<Revision> byType = known.values().stream()
                    .sorted(Comparator.comparing(
                                    (Revision one) -> ThingType.of(one.type()).orElseThrow())
                            .thenComparing(Revision::thing))
                    .toList();
            for (Revision one : byType) {
                if (one.thing().equals(canyon)
                        || parent(one).filter(taken::contains).isPresent()) {
                    taken.add(one.thing());
                    ordered.add(one);
                }
            }
            return ordered;
        }
    }
}
