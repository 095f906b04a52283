package thalweg.storage;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Everything that the query tables hold, without local keys, so that two moments can be held against each other. */
public final class TableDump {

    private static final Map<String, String> PARENTS = new TreeMap<>(Map.of(
            "obstacle", "canyon", "station", "obstacle", "anchor", "station", "part", "anchor", "trip", "canyon"));

    private static final Map<String, String> OWNERS = new TreeMap<>(Map.of(
            "inspection",
            "part",
            "rigging_note",
            "station",
            "rig_analysis",
            "station",
            "round",
            "canyon",
            "sheet_given",
            "canyon"));

    private static final String THINGS = """
            select hex(t.uid), hex(q.uid), t.place, t.body%s
              from %s t
              join %s q on q.key = t.parent
             where %s
             order by t.uid
            """;

    private static final String FACTS = """
            select hex(t.uid), hex(q.uid), t.day, t.last_day, t.author, t.at, t.body, hex(t.corrects)%s
              from %s t
              join %s q on q.key = t.%s
             where %s
             order by t.uid
            """;

    private static final String CANYONS = """
            select hex(t.uid), t.name, t.whereabouts, t.french, t.american, t.longest_drop_cm, t.invented, t.sort,
                   t.body, s.stations, s.longest_drop_cm, s.worst, s.never_seen, s.newest%s
              from canyon t
              join canyon_state s on s.canyon = t.key
             where %s
             order by t.uid
            """;

    private static final String PART_STATES = """
            select hex(t.uid), s.condition, s.seen_on, s.contradictory, s.not_seen_since, s.entries
              from part t
              join part_state s on s.part = t.key
             where %s
             order by t.uid
            """;

    private static final String STATION_STATES = """
            select hex(t.uid), s.canyon_sort, s.sort, s.position, s.place, s.parts, s.worst, s.gone, s.never_seen,
                   s.severity, s.look_order, s.oldest_look
              from station t
              join station_state s on s.station = t.key
             where %s
             order by t.uid
            """;

    private static final String NOTES = """
            select hex(t.uid), hex(t.about), t.body%s
              from private_note t
             where %s
             order by t.uid
            """;

    private TableDump() {}

    /** What is in use and counts, whichever revision says so: the same before a change and after it was taken back. */
    public static Map<String, List<String>> inForce(Database database) {
        return dump(database, "t.removed = 0", "t.counts = 1", "", "");
    }

    /** Every row with every column. */
    public static Map<String, List<String>> whole(Database database) {
        Map<String, List<String>> tables =
                dump(database, "true", "true", ", hex(t.head), t.removed", ", t.counts, t.amended");
        tables.put(
                "withdrawal",
                rows(database, "select hex(uid), hex(withdrawn), author, at, body from withdrawal order by uid"));
        return tables;
    }

    private static Map<String, List<String>> dump(
            Database database, String things, String facts, String moreOfThings, String moreOfFacts) {
        Map<String, List<String>> tables = new TreeMap<>();
        tables.put("canyon", rows(database, CANYONS.formatted(moreOfThings, things)));
        PARENTS.forEach((table, parent) ->
                tables.put(table, rows(database, THINGS.formatted(moreOfThings, table, parent, things))));
        OWNERS.forEach((table, owner) ->
                tables.put(table, rows(database, FACTS.formatted(moreOfFacts, table, owner, owner, facts))));
        tables.put("part_state", rows(database, PART_STATES.formatted(things)));
        tables.put("station_state", rows(database, STATION_STATES.formatted(things)));
        tables.put("private_note", rows(database, NOTES.formatted(moreOfThings, things)));
        return tables;
    }

    /** How much there is in the ledger, which only grows. */
    public static int ledgerSize(Database database) {
        return Integer.parseInt(rows(database, "select (select count(*) from revision) + (select count(*) from fact)")
                .get(0));
    }

    private static List<String> rows(Database database, String query) {
        return database.read(sql -> sql.all(query, TableDump::row));
    }

    private static String row(ResultSet row) throws SQLException {
        StringBuilder text = new StringBuilder();
        for (int column = 1; column <= row.getMetaData().getColumnCount(); column++) {
            text.append(column == 1 ? "" : "|").append(row.getString(column));
        }
        return text.toString().lines().collect(Collectors.joining("\\n"));
    }
}
