package thalweg.storage;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import thalweg.fault.Sentence;
import thalweg.ledger.Fact;
import thalweg.ledger.Hash;
import thalweg.ledger.LedgerText;
import thalweg.ledger.Revision;

/** Holds the database against what it should be: the file, the ledger's hashes, and the tables derived from it. */
public final class CheckStore {

    private static final String REVISIONS = """
            select hex(r.hash), hex(r.thing), r.type, r.gen,
                   coalesce((select group_concat(hex(p.parent), ' ' order by p.parent)
                               from revision_parent p
                              where p.revision = r.key), ''),
                   r.canonical
              from revision r
             order by r.key
            """;

    private static final String FACTS = """
            select hex(uid), hex(about), type, canonical
              from fact
             order by key
            """;

    private static final String ORPHANS = """
            select distinct hex(r.hash)
              from revision r
              join revision_parent p on p.revision = r.key
             where not exists (select 1 from revision q where q.hash = p.parent)
            """;

    private final Database database;

    /**
     * @param database that is checked; nothing in it is changed
     */
    public CheckStore(Database database) {
        this.database = database;
    }

    /** What is wrong, one sentence each; empty where all is well. */
    public List<Sentence> findings() {
        List<Sentence> findings = new ArrayList<>(fileFindings());
        if (findings.isEmpty()) {
            findings.addAll(ledger());
        }
        if (findings.isEmpty()) {
            findings.addAll(derived());
        }
        return findings;
    }

    /** What is wrong with the file and the tables in it, whatever they hold. */
    public List<Sentence> fileFindings() {
        List<Sentence> findings = pages();
        return findings.isEmpty() ? schema() : findings;
    }

    /** The tables, indexes and whatever else there is, held against those of a new database. */
    private List<Sentence> schema() {
        Map<String, String> there = database.read(CheckStore::schema);
        Map<String, String> expected;
        try (Database fresh = Database.inMemory()) {
            expected = fresh.read(CheckStore::schema);
        }
        List<Sentence> findings = new ArrayList<>();
        expected.forEach((name, made) -> {
            if (!made.equals(there.get(name))) {
                findings.add(
                        there.containsKey(name)
                                ? Sentence.of(
                                        "The {0} was altered; put a backup copy of the database in its place.", name)
                                : Sentence.of(
                                        "The {0} is missing; put a backup copy of the database in its place.", name));
            }
        });
        there.keySet().stream()
                .filter(name -> !expected.containsKey(name))
                .forEach(name ->
                        findings.add(Sentence.of("The {0} is not of this program; somebody put it there.", name)));
        return findings;
    }

    private static Map<String, String> schema(Sql sql) throws SQLException {
        Map<String, String> schema = new TreeMap<>();
        sql.all(
                "select type || ' ' || name, coalesce(sql, '') from sqlite_schema order by 1",
                row -> schema.put(row.getString(1), row.getString(2)));
        return schema;
    }

    private List<Sentence> pages() {
        return database.read(sql -> {
            List<Sentence> findings = new ArrayList<>();
            sql.all("pragma integrity_check", row -> row.getString(1)).stream()
                    .filter(line -> !line.equals("ok"))
                    .forEach(line -> findings.add(damage(line)));
            sql.all("pragma foreign_key_check", row -> row.getString(1))
                    .forEach(table -> findings.add(Sentence.of("A row of the table {0} belongs to nothing.", table)));
            return findings;
        });
    }

    private static Sentence damage(String line) {
        return SearchIndex.TABLES.stream()
                .filter(line::contains)
                .findFirst()
                .map(CheckStore::underived)
                .orElse(Sentence.of("The file is damaged: {0}.", line));
    }

    private static Sentence underived(String table) {
        return Sentence.of(
                "The table {0} does not match the ledger it is derived from; check --rebuild mends it.", table);
    }

    private List<Sentence> ledger() {
        return database.read(sql -> {
            List<Optional<Sentence>> findings = new ArrayList<>();
            findings.addAll(sql.all(
                    REVISIONS,
                    row -> compare(row, LedgerText.revision(text(row)).map(CheckStore::columns))));
            findings.addAll(sql.all(
                    FACTS, row -> compare(row, LedgerText.fact(text(row)).map(CheckStore::columns))));
            findings.addAll(sql.all(
                    ORPHANS,
                    row -> Optional.of(Sentence.of(
                            "The entry {0} of the ledger follows one that is missing; put a backup copy in its place.",
                            brief(row.getString(1))))));
            return findings.stream().flatMap(Optional::stream).toList();
        });
    }

    private static String text(ResultSet row) throws SQLException {
        return row.getString("canonical");
    }

    /** Holds the columns of an entry, of which the last is its text, against what they should be by that text. */
    private static Optional<Sentence> compare(ResultSet row, Optional<List<String>> expected) throws SQLException {
        List<String> columns = new ArrayList<>();
        for (int column = 1; column < row.getMetaData().getColumnCount(); column++) {
            columns.add(row.getString(column));
        }
        return expected.filter(columns::equals).isPresent()
                ? Optional.empty()
                : Optional.of(Sentence.of(
                        "The entry {0} of the ledger was altered: its text does not match its name or the columns"
                                + " beside it. Put a backup copy in its place.",
                        brief(columns.get(0))));
    }

    private static String brief(String hex) {
        return hex.toLowerCase(Locale.ROOT).substring(0, 8);
    }

    private static List<String> columns(Revision revision) {
        return List.of(
                hex(revision.hash().bytes()),
                hex(revision.thing().bytes()),
                revision.type(),
                Long.toString(revision.gen()),
                revision.parents().stream()
                        .map(Hash::bytes)
                        .map(CheckStore::hex)
                        .collect(Collectors.joining(" ")));
    }

    private static List<String> columns(Fact fact) {
        return List.of(hex(fact.uid().bytes()), hex(fact.about().bytes()), fact.type());
    }

    private static String hex(byte[] bytes) {
        return HexFormat.of().withUpperCase().formatHex(bytes);
    }

    private List<Sentence> derived() {
        List<Sentence> findings = new ArrayList<>();
        try (Database fresh = Database.inMemory()) {
            database.read(stored -> fresh.write(rebuilt -> {
                LedgerStore.replay(stored, rebuilt);
                for (String table : Derived.TABLES) {
                    if (!RowSum.of(stored, Dumps.of(table)).equals(RowSum.of(rebuilt, Dumps.of(table)))) {
                        findings.add(underived(table));
                    }
                }
                for (String table : SearchIndex.TABLES) {
                    if (!words(stored, table).equals(words(rebuilt, table))) {
                        findings.add(underived(table));
                    }
                }
                return findings;
            }));
        } catch (IllegalArgumentException e) {
            findings.add(Sentence.of("The ledger breaks a rule of this program: {0}.", String.valueOf(e.getMessage())));
        }
        return findings;
    }

    /** The words of an index, read from the index itself through a table that lives as long as the connection. */
    private static RowSum words(Sql sql, String table) throws SQLException {
        sql.run("create virtual table if not exists temp.%1$s_read using fts5vocab(main, %1$s, instance)"
                .formatted(table));
        return RowSum.of(sql, Dumps.WORDS.formatted(table, table.substring(0, table.indexOf('_'))));
    }

    /** The statements that show a table without its integer keys, which differ from one filling to the next. */
    private static final class Dumps {

        private static final String CHILD = """
                select hex(t.uid), hex(t.head), hex(q.uid), t.place, t.body, t.removed%s
                  from %s t
                  join %s q on q.key = t.parent
                """;

        private static final String FACT = """
                select hex(t.uid), hex(q.uid), t.day, t.last_day, t.author, t.at, t.body, t.counts, t.amended,
                       hex(t.corrects)
                  from %s t
                  join %s q on q.key = t.%2$s
                """;

        private static final String CANYON = """
                select hex(uid), hex(head), name, whereabouts, french, american, longest_drop_cm, invented, sort,
                       body, removed, region, country, french_vertical, french_aquatic, french_commitment,
                       american_class, american_water_from, american_water_to, american_time, american_risk,
                       minutes_from, minutes_to
                  from canyon
                """;

        private static final String WITHDRAWAL = """
                select hex(uid), hex(withdrawn), author, at, body
                  from withdrawal
                """;

        private static final String PRIVATE_NOTE = """
                select hex(uid), hex(head), hex(about), body, removed
                  from private_note
                """;

        private static final String PART_STATE = """
                select hex(p.uid), t.condition, t.seen_on, t.contradictory, t.not_seen_since, t.entries,
                       t.replaced_on, t.looked_last, t.looked_on
                  from part_state t
                  join part p on p.key = t.part
                """;

        private static final String STATION_STATE = """
                select hex(s.uid), hex(c.uid), t.canyon_sort, t.sort, t.position, t.place, t.parts, t.worst, t.gone,
                       t.never_seen, t.severity, t.look_order, t.oldest_look
                  from station_state t
                  join station s on s.key = t.station
                  join canyon c on c.key = t.canyon
                """;

        private static final String CANYON_STATE = """
                select hex(c.uid), t.stations, t.longest_drop_cm, t.worst, t.gone, t.never_seen, t.newest,
                       t.drop_from_cm, t.drop_to_cm
                  from canyon_state t
                  join canyon c on c.key = t.canyon
                """;

        /** A word whose thing is missing stands without its name, and so is not what it should be. */
        private static final String WORDS = """
                select hex(t.uid), v.col, v.term
                  from temp.%1$s_read v
                  left join %2$s t on t.key = v.doc
                 union all
                select hex(t.uid), 'indexed', ''
                  from %1$s w
                  left join %2$s t on t.key = w.rowid
                """;

        private static String of(String table) {
            return switch (table) {
                case "canyon" -> CANYON;
                case "obstacle" -> CHILD.formatted(", t.drop_cm, t.unmeasured", "obstacle", "canyon");
                case "station" -> CHILD.formatted(", t.sort", "station", "obstacle");
                case "anchor" -> CHILD.formatted("", "anchor", "station");
                case "part" -> CHILD.formatted("", "part", "anchor");
                case "inspection" -> FACT.formatted("inspection", "part");
                case "rigging_note", "rig_analysis" -> FACT.formatted(table, "station");
                case "round", "sheet_given" -> FACT.formatted(table, "canyon");
                case "withdrawal" -> WITHDRAWAL;
                case "trip" -> CHILD.formatted("", "trip", "canyon");
                case "private_note" -> PRIVATE_NOTE;
                case "part_state" -> PART_STATE;
                case "station_state" -> STATION_STATE;
                case "canyon_state" -> CANYON_STATE;
                default -> throw new AssertionError("no such table: " + table);
            };
        }
    }
}
