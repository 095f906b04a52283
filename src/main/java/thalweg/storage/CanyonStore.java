package thalweg.storage;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.jspecify.annotations.Nullable;
import thalweg.ledger.Uid;
import thalweg.logbook.CanyonRow;
import thalweg.logbook.Condition;
import thalweg.text.Fold;
import thalweg.units.Length;

/** Lists canyons and finds canyons and stations by words. */
public final class CanyonStore {

    /** How many stations a search returns at the most: more are of no use to anybody who has to choose one. */
    public static final int MOST_STATIONS = 50;

    private static final String LIST = """
            select c.uid, c.name, c.whereabouts, c.french, c.american, c.invented,
                   s.longest_drop_cm, s.stations, s.worst, s.never_seen, s.newest
              from canyon c
              join canyon_state s on s.canyon = c.key
             where c.removed = 0
               and %s
             order by c.sort, c.uid
            """;

    private static final String STATIONS = """
            select s.uid, c.uid, c.name, json_extract(s.body, '$.name')
              from station s
              join obstacle o on o.key = s.parent
              join canyon c on c.key = o.parent
             where c.removed = 0
               and o.removed = 0
               and s.removed = 0
               and %s
             order by c.sort, c.uid, o.place, o.uid, s.place, s.uid
             limit 50
            """;

    private final Database database;

    /**
     * @param database that is searched
     */
    public CanyonStore(Database database) {
        this.database = database;
    }

    /**
     * A station that a search found.
     *
     * @param station its name in every database
     * @param canyon where it is
     * @param canyonName as entered
     * @param stationName as entered
     */
    public record FoundStation(Uid station, Uid canyon, String canyonName, String stationName) {}

    /** Canyons in which every word begins a word of the name, another name, the region or the country; by name. */
    public List<CanyonRow> search(String words) {
        List<String> tokens = Fold.tokens(words);
        return database.read(sql ->
                sql.all(LIST.formatted(everyWord("c.search", tokens.size())), CanyonStore::row, patterns(tokens)));
    }

    /**
     * Stations in which every word begins a word of the station's name or of what finds its canyon, one word or more of
     * the station's own name: the name of a canyon alone means none of its stations.
     */
    public List<FoundStation> stations(String words) {
        List<String> tokens = Fold.tokens(words);
        if (tokens.isEmpty()) {
            return List.of();
        }
        String own = String.join(" or ", Collections.nCopies(tokens.size(), "s.search like ? escape '!'"));
        String condition = everyWord("(c.search || ' ' || s.search)", tokens.size()) + " and (" + own + ")";
        List<@Nullable Object> values = new ArrayList<>(List.of(patterns(tokens)));
        values.addAll(List.of(patterns(tokens)));
        return database.read(sql -> sql.all(STATIONS.formatted(condition), CanyonStore::station, values.toArray()));
    }

    /** The station of that id, if it is known. */
    public Optional<FoundStation> station(Uid uid) {
        return database.read(
                sql -> sql.one(STATIONS.formatted("s.uid = ?"), CanyonStore::station, (Object) uid.bytes()));
    }

    /** The canyons of exactly that name, but for accents and case. */
    public List<Uid> named(String name) {
        return database.read(sql -> sql.all(
                "select uid from canyon where sort = ? and removed = 0 order by uid",
                row -> Uid.ofBytes(row.getBytes(1)),
                Fold.fold(name)));
    }

    /** How many canyons there are. */
    public int count() {
        return database.read(sql -> sql.one("select count(*) from canyon where removed = 0", row -> row.getInt(1)))
                .orElse(0);
    }

    private static String everyWord(String column, int words) {
        List<String> conditions = new ArrayList<>(List.of("true"));
        for (int i = 0; i < words; i++) {
            conditions.add(column + " like ? escape '!'");
        }
        return String.join(" and ", conditions);
    }

    private static @Nullable Object[] patterns(List<String> tokens) {
        return tokens.stream()
                .map(token -> "% " + token.replace("!", "!!").replace("%", "!%").replace("_", "!_") + "%")
                .toArray();
    }

    private static FoundStation station(ResultSet row) throws SQLException {
        return new FoundStation(
                Uid.ofBytes(row.getBytes(1)), Uid.ofBytes(row.getBytes(2)), row.getString(3), row.getString(4));
    }

    private static CanyonRow row(ResultSet row) throws SQLException {
        OptionalInt drop = number(row, "longest_drop_cm");
        OptionalInt worst = number(row, "worst");
        String newest = row.getString("newest");
        return new CanyonRow(
                Uid.ofBytes(row.getBytes("uid")),
                row.getString("name"),
                row.getString("whereabouts"),
                row.getString("french"),
                row.getString("american"),
                drop.isPresent() ? Optional.of(Length.centimetres(drop.getAsInt())) : Optional.empty(),
                row.getInt("stations"),
                worst.isPresent() ? Optional.of(Condition.ofSeverity(worst.getAsInt())) : Optional.empty(),
                row.getInt("never_seen"),
                newest == null ? "" : newest,
                row.getInt("invented") == 1);
    }

    private static OptionalInt number(ResultSet row, String column) throws SQLException {
        int number = row.getInt(column);
        return row.wasNull() ? OptionalInt.empty() : OptionalInt.of(number);
    }
}
