package thalweg.storage;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import org.jspecify.annotations.Nullable;
import thalweg.ledger.Uid;
import thalweg.logbook.CanyonFilter;
import thalweg.logbook.CanyonKeys;
import thalweg.logbook.CanyonMeasure;
import thalweg.logbook.CanyonRow;
import thalweg.logbook.Condition;
import thalweg.logbook.Finding;
import thalweg.logbook.FoundCanyon;
import thalweg.logbook.RowOrder;
import thalweg.logbook.Standing;
import thalweg.logbook.StationRow;
import thalweg.text.Fold;
import thalweg.units.Length;

/** Lists canyons and finds canyons and stations by words and by what must hold of them. */
public final class CanyonStore {

    /** How many stations a search returns at the most: more are of no use to anybody who has to choose one. */
    public static final int MOST_STATIONS = 50;

    private static final String LIST = """
            select c.key, c.uid, c.name, c.whereabouts, c.french, c.american, c.invented,
                   t.longest_drop_cm, t.stations, t.worst, t.gone, t.never_seen, t.newest, %s as doubt
              from %s
             where %s
             order by c.sort, c.uid
            """;

    private static final String BY_KEYS = "c.key in (select value from json_each(?))";

    private static final String KEYS = """
            select c.key, %s as doubt
              from %s
             where %s
             order by c.sort, c.uid
            """;

    /** Without a look at anything but an index. */
    static final String ALL_KEYS = """
            select key, 0 as doubt
              from canyon
             where removed = 0
             order by sort, uid
            """;

    static final String COUNT = "select count(*) from canyon where removed = 0";

    /** So many are taken first, in the order of the index, and then put in order: a letter may begin half of all names. */
    private static final String STATIONS = """
            with found as materialized (
                select s.uid, c.uid as canyon, c.name as canyon_name, json_extract(s.body, '$.name') as name,
                       c.sort, o.place as o_place, o.uid as o_uid, s.place
                  from %s
                  join station_words w on w.rowid = s.key
                  join canyon_state t on t.canyon = c.key
                 where station_words match ?
                   and %s
                   and (%s) = 0
                 limit ?
            )
            select uid, canyon, canyon_name, name
              from found
             order by sort, canyon, o_place, o_uid, place, uid
            """;

    private static final String STATION = """
            select s.uid, c.uid, c.name, json_extract(s.body, '$.name')
              from %s
             where s.uid = ?
            """;

    private final Database database;

    /**
     * @param database that is searched
     */
    public CanyonStore(Database database) {
        this.database = database;
    }

    /** Canyons in which every word begins a word of the name, another name, the region or the country; by name. */
    public List<CanyonRow> search(String words) {
        return canyons(Finding.of(words)).stream().map(FoundCanyon::row).toList();
    }

    /** Canyons for which all that is looked for holds or may hold, by name. */
    public List<FoundCanyon> canyons(Finding finding) {
        CanyonConditions conditions = CanyonConditions.of(finding);
        String query = LIST.formatted(conditions.doubt(), Shown.CANYONS, conditions.mayHold());
        List<@Nullable Object> values = new ArrayList<>(conditions.doubtValues());
        values.addAll(conditions.mayHoldValues());
        return database.read(sql -> sql.all(query, CanyonStore::canyon, values.toArray()));
    }

    /** The keys of the same canyons in the same order, those that may fit only where the filter says so. */
    public CanyonKeys keys(Finding finding) {
        CanyonConditions conditions = CanyonConditions.of(finding);
        String query = conditions.isNone()
                ? ALL_KEYS
                : KEYS.formatted(conditions.doubt(), Shown.CANYONS, conditions.mayHold());
        List<@Nullable Object> values = new ArrayList<>(conditions.doubtValues());
        values.addAll(conditions.mayHoldValues());
        return database.read(sql -> {
            LongStream.Builder keys = LongStream.builder();
            AtomicInteger unknown = new AtomicInteger();
            sql.each(
                    query,
                    row -> {
                        boolean fits = row.getInt(2) == 0;
                        if (!fits) {
                            unknown.incrementAndGet();
                        }
                        if (fits || finding.filter().unknownToo()) {
                            keys.add(row.getLong(1));
                        }
                    },
                    values.toArray());
            return new CanyonKeys(new RowOrder(keys.build().toArray()), unknown.get());
        });
    }

    /** The key of a canyon, if it is known. */
    public OptionalLong key(Uid canyon) {
        return database.read(sql ->
                        sql.one("select key from canyon where uid = ?", row -> row.getLong(1), (Object) canyon.bytes()))
                .map(OptionalLong::of)
                .orElseGet(OptionalLong::empty);
    }

    /**
     * The canyons of those keys; one that is gone meanwhile is missing.
     *
     * @param filter by which it is told of each whether it surely fits
     */
    public Map<Long, FoundCanyon> rows(RowOrder keys, CanyonFilter filter) {
        CanyonConditions conditions = CanyonConditions.of(new Finding("", filter));
        String query = LIST.formatted(conditions.doubt(), Shown.CANYONS, BY_KEYS);
        List<@Nullable Object> values = new ArrayList<>(conditions.doubtValues());
        values.add(Sql.array(keys));
        Map<Long, FoundCanyon> found = new HashMap<>();
        database.read(sql -> sql.all(query, row -> found.put(row.getLong("key"), canyon(row)), values.toArray()));
        return found;
    }

    /**
     * Stations in which every word begins a word of the station's name or of what finds its canyon, one word or more of
     * the station's own name: the name of a canyon alone means none of its stations.
     */
    public List<StationRow> stations(String words) {
        return stations(Finding.of(words), MOST_STATIONS);
    }

    /** The same in canyons that fit the filter, or may fit where it says so. */
    public List<StationRow> stations(Finding finding, int most) {
        Optional<String> question =
                new Match().words(finding.words()).oneOf("own", finding.words()).question();
        if (question.isEmpty()) {
            return List.of();
        }
        CanyonFilter filter = finding.filter();
        CanyonConditions conditions = CanyonConditions.of(new Finding("", filter));
        List<@Nullable Object> values = new ArrayList<>();
        values.add(question.get());
        values.addAll(conditions.mayHoldValues());
        if (!filter.unknownToo()) {
            values.addAll(conditions.doubtValues());
        }
        values.add(most);
        String query = STATIONS.formatted(
                Shown.STATIONS, conditions.mayHold(), filter.unknownToo() ? "0" : conditions.doubt());
        return database.read(sql -> sql.all(query, CanyonStore::station, values.toArray()));
    }

    /** The station of that id, if it is known. */
    public Optional<StationRow> station(Uid uid) {
        return database.read(
                sql -> sql.one(STATION.formatted(Shown.STATIONS), CanyonStore::station, (Object) uid.bytes()));
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
        return database.read(sql -> sql.one(COUNT, row -> row.getInt(1))).orElse(0);
    }

    private static StationRow station(ResultSet row) throws SQLException {
        return new StationRow(
                Uid.ofBytes(row.getBytes(1)), Uid.ofBytes(row.getBytes(2)), row.getString(3), row.getString(4));
    }

    private static FoundCanyon canyon(ResultSet row) throws SQLException {
        int doubt = row.getInt("doubt");
        Set<CanyonMeasure> unknown = Arrays.stream(CanyonMeasure.values())
                .filter(measure -> (doubt >> CanyonConditions.bit(measure) & 1) == 1)
                .collect(Collectors.toUnmodifiableSet());
        return new FoundCanyon(row(row), unknown, (doubt >> CanyonConditions.WHERE_BIT & 1) == 1);
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
                new Standing(
                        worst.isPresent() ? Optional.of(Condition.ofSeverity(worst.getAsInt())) : Optional.empty(),
                        row.getInt("gone"),
                        row.getInt("never_seen")),
                newest == null ? "" : newest,
                row.getInt("invented") == 1);
    }

    private static OptionalInt number(ResultSet row, String column) throws SQLException {
        int number = row.getInt(column);
        return row.wasNull() ? OptionalInt.empty() : OptionalInt.of(number);
    }
}
