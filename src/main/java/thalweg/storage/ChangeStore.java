package thalweg.storage;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import thalweg.ledger.Fact;
import thalweg.ledger.LedgerText;
import thalweg.ledger.Revision;
import thalweg.ledger.Uid;

/** Remembers what was written together in this database, so that it can be shown and taken back together. */
public final class ChangeStore {

    /** As many entries of a change tell in a list what it was about. */
    private static final int TELLING = 3;

    private static final String KEEP = """
            insert into change (kind, undoes, author, at, canyon)
            values (?, ?, ?, ?, (select uid from canyon where key = ?))
            """;

    private static final String KEEP_ENTRY = """
            insert into change_entry (change, position, revision, fact)
            values (?, ?, ?, ?)
            """;

    private static final String CHANGES = """
            select c.key, c.kind, c.undoes, c.author, c.at, c.canyon,
                   (select count(*) from change_entry e where e.change = c.key) size,
                   coalesce((select u.kind from change u where u.undoes = c.key order by u.key desc limit 1), '') last
              from change c
             where %s
             order by c.key desc
             limit ?
            """;

    private static final String REVISIONS = """
            select r.canonical
              from change_entry e
              join revision r on r.key = e.revision
             where e.change = ?
             order by e.position
             limit ?
            """;

    private static final String FACTS = """
            select f.canonical
              from change_entry e
              join fact f on f.key = e.fact
             where e.change = ?
             order by e.position
             limit ?
            """;

    private static final String COUNTS = """
            select coalesce(r.type, f.type), count(*)
              from change_entry e
              left join revision r on r.key = e.revision
              left join fact f on f.key = e.fact
             where e.change = ?
             group by 1
            """;

    private static final String LATER = """
            select coalesce(r.thing, f.uid)
              from change c
              join change_entry e on e.change = c.key
              left join revision r on r.key = e.revision
              left join fact f on f.key = e.fact
             where c.key > ?
               and %s
            """;

    private static final String STANDS = """
            c.kind = 'done'
               and coalesce((select u.kind from change u where u.undoes = c.key order by u.key desc limit 1), '')
                   <> 'undone'""";

    /** A sheet that was written cannot be unwritten, so that taking back passes over the note of it. */
    private static final String IS_MORE_THAN_SHEETS = """
            exists (select 1
                            from change_entry e
                            left join fact f on f.key = e.fact
                           where e.change = %s.key
                             and (e.fact is null or f.type <> 'sheet_given'))""";

    private static final String UNDOABLE = STANDS + "\n   and " + IS_MORE_THAN_SHEETS.formatted("c");

    /** The latest undoing that was not brought again, unless something else was changed since. */
    private static final String REDOABLE = """
            c.kind = 'undone'
               and c.key = (select max(u.key) from change u where u.undoes = c.undoes)
               and not exists (select 1 from change d where d.kind = 'done' and d.key > c.key and %s)""".formatted(IS_MORE_THAN_SHEETS.formatted("d"));

    private final Database database;

    /**
     * @param database whose changes they are
     */
    public ChangeStore(Database database) {
        this.database = database;
    }

    /** Remembers a change; the caller holds the transaction. */
    static void keep(Sql sql, Written written) throws SQLException {
        Long canyon =
                written.canyons().size() == 1 ? written.canyons().iterator().next() : null;
        long key = sql.insert(
                KEEP,
                written.kind().name().toLowerCase(Locale.ROOT),
                written.undoes().orElse(null),
                written.author(),
                written.at(),
                canyon);
        int position = 0;
        for (long revision : written.revisions()) {
            sql.run(KEEP_ENTRY, key, position++, revision, null);
        }
        for (long fact : written.facts()) {
            sql.run(KEEP_ENTRY, key, position++, null, fact);
        }
    }

    /**
     * What was written in one transaction.
     *
     * @param kind what it is to another change
     * @param undoes that other change
     * @param author who wrote it
     * @param at when
     * @param canyons keys of the rows of the canyons that were touched
     * @param revisions keys of their rows
     * @param facts keys of their rows
     */
    record Written(
            Change.Kind kind,
            Optional<Long> undoes,
            String author,
            String at,
            Set<Long> canyons,
            List<Long> revisions,
            List<Long> facts) {}

    /** The latest changes of their own, newest first, each with the first of its entries. */
    public List<Change> latest(int most) {
        return list("c.kind = ?", "done", most);
    }

    /** The same of one canyon. */
    public List<Change> latest(Uid canyon, int most) {
        return list("c.kind = 'done' and c.canyon = ?", canyon.bytes(), most);
    }

    private List<Change> list(String condition, Object value, int most) {
        return database.read(sql -> {
            List<Change> changes = new ArrayList<>();
            for (Change bare : sql.all(CHANGES.formatted(condition), ChangeStore::bare, value, most)) {
                changes.add(filled(sql, bare, TELLING));
            }
            return changes;
        });
    }

    /** How many things and entries of each type a change touched. */
    public Map<String, Integer> counts(long key) {
        return database.read(sql -> {
            Map<String, Integer> counts = new TreeMap<>();
            sql.all(COUNTS, row -> counts.put(row.getString(1), row.getInt(2)), key);
            return counts;
        });
    }

    /** A change with all its entries. */
    public Optional<Change> whole(long key) {
        return first("c.key = " + key);
    }

    /** The latest change that stands, with all its entries: what undo takes back. */
    public Optional<Change> undoable() {
        return first(UNDOABLE);
    }

    /** The things that changes touched and the facts that they added, of those that came after that one and stand. */
    public Set<Uid> touchedSince(long key) {
        return database.read(
                sql -> new HashSet<>(sql.all(LATER.formatted(STANDS), row -> Uid.ofBytes(row.getBytes(1)), key)));
    }

    /** The latest undoing that can be brought again, with all its entries. */
    public Optional<Change> redoable() {
        return first(REDOABLE);
    }

    /** The last change that took this one back or brought it again, with all its entries. */
    public Optional<Change> lastAbout(long key) {
        return first("c.undoes = " + key);
    }

    /** The same with the first of its entries only. */
    public Optional<Change> lastAboutInShort(long key) {
        return list("c.undoes = ?", key, 1).stream().findFirst();
    }

    private Optional<Change> first(String condition) {
        return database.read(sql -> {
            Optional<Change> bare = sql.one(CHANGES.formatted(condition), ChangeStore::bare, 1);
            return bare.isEmpty() ? bare : Optional.of(filled(sql, bare.get(), -1));
        });
    }

    private static Change bare(ResultSet row) throws SQLException {
        long undoes = row.getLong("undoes");
        Optional<Long> other = row.wasNull() ? Optional.empty() : Optional.of(undoes);
        byte[] canyon = row.getBytes("canyon");
        return new Change(
                row.getLong("key"),
                Change.Kind.valueOf(row.getString("kind").toUpperCase(Locale.ROOT)),
                other,
                row.getString("author"),
                row.getString("at"),
                canyon == null ? Optional.empty() : Optional.of(Uid.ofBytes(canyon)),
                row.getInt("size"),
                List.of(),
                List.of(),
                row.getString("last").equals("undone"));
    }

    private static Change filled(Sql sql, Change bare, int most) throws SQLException {
        List<Revision> revisions = new ArrayList<>();
        for (String text : sql.all(REVISIONS, row -> row.getString(1), bare.key(), most)) {
            LedgerText.revision(text).ifPresent(revisions::add);
        }
        List<Fact> facts = new ArrayList<>();
        for (String text : sql.all(FACTS, row -> row.getString(1), bare.key(), most)) {
            LedgerText.fact(text).ifPresent(facts::add);
        }
        return new Change(
                bare.key(),
                bare.kind(),
                bare.undoes(),
                bare.author(),
                bare.at(),
                bare.canyon(),
                bare.size(),
                revisions,
                facts,
                bare.taken());
    }
}
