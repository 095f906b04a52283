package thalweg.storage;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import thalweg.ledger.Uid;
import thalweg.logbook.CanyonFilter;
import thalweg.logbook.CanyonMeasure;
import thalweg.logbook.CanyonRow;
import thalweg.logbook.Condition;
import thalweg.logbook.Finding;
import thalweg.logbook.FoundCanyon;
import thalweg.logbook.Standing;
import thalweg.logbook.StationRow;
import thalweg.text.Fold;
import thalweg.units.Length;

/** Lists canyons and finds canyons and stations by words and by what must hold of them. */
public final class CanyonStore {

    /** How many stations a search returns at the most: more are of no use to anybody who has to choose one. */
    public static final int MOST_STATIONS = 50;

    private static final String LIST = """
            select c.uid, c.name, c.whereabouts, c.french, c.american, c.invented,
                   t.longest_drop_cm, t.stations, t.worst, t.gone, t.never_seen, t.newest, %s as doubt
              from %s
             where %s
             order by c.sort, c.uid
            """;

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
        return database.read(sql -> sql.one("select count(*) from canyon where removed = 0", row -> row.getInt(1)))
                .orElse(0);
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
