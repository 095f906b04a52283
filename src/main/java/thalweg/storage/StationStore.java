package thalweg.storage;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import thalweg.ledger.Uid;
import thalweg.logbook.CanyonName;
import thalweg.logbook.Condition;
import thalweg.logbook.ListedStation;
import thalweg.logbook.RowOrder;
import thalweg.logbook.Standing;
import thalweg.logbook.StationOrder;
import thalweg.route.ObstacleKind;
import thalweg.route.PartialDate;
import thalweg.units.Length;

/** The list of all stations: its order first, then the rows that somebody looks at. */
public final class StationStore {

    private static final String KEYS = """
            select station
              from station_state
             %s
             order by %s
            """;

    private static final String WITH_WORDS =
            "where station in (select rowid from station_words where station_words match ?)";

    private static final String ROWS = """
            select t.station, s.uid, json_extract(s.body, '$.name') as name, c.uid as canyon, c.name as canyon_name,
                   c.whereabouts, c.invented, t.place, json_extract(o.body, '$.kind') as kind,
                   json_extract(o.body, '$.height_cm') as height_cm, t.parts, t.worst, t.gone, t.never_seen, t.oldest_look
              from station_state t
              join station s on s.key = t.station
              join obstacle o on o.key = s.parent
              join canyon c on c.key = t.canyon
             where t.station in (select value from json_each(?))
            """;

    private final Database database;

    /**
     * @param database that is read
     */
    public StationStore(Database database) {
        this.database = database;
    }

    /**
     * The stations in which every word begins a word of the station's name or of what finds its canyon, in order.
     *
     * @param words blank for every station
     */
    public RowOrder keys(String words, StationOrder order) {
        Optional<String> question = new Match().words(words).question();
        String query = query(question.isPresent(), order);
        Object[] values = question.stream().toArray();
        return database.read(sql -> {
            LongStream.Builder keys = LongStream.builder();
            sql.each(query, row -> keys.add(row.getLong(1)), values);
            return new RowOrder(keys.build().toArray());
        });
    }

    static String query(boolean withWords, StationOrder order) {
        return KEYS.formatted(withWords ? WITH_WORDS : "", sorted(order));
    }

    /** Each as one of the indexes has it. */
    private static String sorted(StationOrder order) {
        return switch (order) {
            case LOOKED -> "look_order, severity desc, canyon_sort, canyon, position";
            case CONDITION -> "severity desc, look_order, canyon_sort, canyon, position";
            case NAME -> "sort, canyon_sort, canyon, position";
            case CANYON -> "canyon_sort, canyon, position";
        };
    }

    /** How many stations there are. */
    public int count() {
        return database.read(sql -> sql.one("select count(*) from station_state", row -> row.getInt(1)))
                .orElse(0);
    }

    /** The rows of those keys, in their order; one that is gone meanwhile is missing. */
    public Map<Long, ListedStation> rows(RowOrder keys) {
        String array =
                Arrays.stream(keys.toArray()).mapToObj(Long::toString).collect(Collectors.joining(",", "[", "]"));
        Map<Long, ListedStation> found = new LinkedHashMap<>();
        database.read(sql -> sql.all(ROWS, row -> found.put(row.getLong("station"), row(row)), array));
        Map<Long, ListedStation> ordered = new LinkedHashMap<>();
        Arrays.stream(keys.toArray())
                .forEach(key -> Optional.ofNullable(found.get(key)).ifPresent(row -> ordered.put(key, row)));
        return ordered;
    }

    private static ListedStation row(ResultSet row) throws SQLException {
        int severity = row.getInt("worst");
        Optional<Condition> worst = row.wasNull() ? Optional.empty() : Optional.of(Condition.ofSeverity(severity));
        String look = row.getString("oldest_look");
        return new ListedStation(
                Uid.ofBytes(row.getBytes("uid")),
                row.getString("name"),
                new CanyonName(
                        Uid.ofBytes(row.getBytes("canyon")),
                        row.getString("canyon_name"),
                        row.getString("whereabouts"),
                        row.getInt("invented") == 1),
                row.getInt("place"),
                kind(row.getString("kind")),
                height(row),
                row.getInt("parts"),
                new Standing(worst, row.getInt("gone"), row.getInt("never_seen")),
                look.isEmpty() ? Optional.empty() : Optional.of(PartialDate.parse(look)),
                Optional.empty());
    }

    private static Optional<ObstacleKind> kind(String word) {
        return Arrays.stream(ObstacleKind.values())
                .filter(one -> one.name().toLowerCase(Locale.ROOT).equals(word))
                .findFirst();
    }

    private static Optional<Length> height(ResultSet row) throws SQLException {
        long centimetres = row.getLong("height_cm");
        return row.wasNull() ? Optional.empty() : Optional.of(Length.centimetres(centimetres));
    }
}
