package thalweg.storage;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import thalweg.body.FactType;
import thalweg.body.SheetGivenBody;
import thalweg.body.TripBody;
import thalweg.ledger.Uid;
import thalweg.logbook.Amendments;
import thalweg.logbook.CanyonName;
import thalweg.logbook.Entry;
import thalweg.logbook.SheetGiven;
import thalweg.logbook.Trip;
import thalweg.logbook.TripInCanyon;

/** Lists what this database keeps to itself, across canyons. */
public final class LocalStore {

    private static final String TRIPS = """
        select t.uid, t.body, c.uid as canyon, c.name, c.whereabouts, c.invented
          from trip t
          join canyon c on c.key = t.parent
         where t.removed = 0
           and c.removed = 0
           and (?1 is null or c.uid = ?1)
        """;

    private static final String CANYONS_WITH_SHEETS = """
        select c.key, c.uid as canyon, c.name, c.whereabouts, c.invented
          from canyon c
         where c.removed = 0
           and (?1 is null or c.uid = ?1)
           and exists (select 1 from sheet_given g where g.canyon = c.key)
         order by c.sort, c.uid
        """;

    private static final String ONE_TRIP = """
        select t.uid, t.body, c.uid as canyon, c.name, c.whereabouts, c.invented
          from trip t
          join canyon c on c.key = t.parent
         where t.removed = 0
           and c.removed = 0
           and t.uid = ?
        """;

    /** Sheets of canyons that were taken out count too, so that no number ever stands on two sheets. */
    static final String LAST_NUMBER = "select coalesce(max(json_extract(body, '$.number')), 0) from sheet_given";

    private final Database database;

    /**
     * @param database that is read
     */
    public LocalStore(Database database) {
        this.database = database;
    }

    /**
     * Trips as people look for them.
     *
     * @param canyon where they go; empty for all
     */
    public List<TripInCanyon> trips(Optional<Uid> canyon) {
        return database
                .read(sql ->
                        sql.all(TRIPS, LocalStore::trip, canyon.map(Uid::bytes).orElse(null)))
                .stream()
                .sorted((one, other) -> Trip.IN_TURN.compare(one.trip(), other.trip()))
                .toList();
    }

    /** The trip of that id, if it is known and in use. */
    public Optional<TripInCanyon> trip(Uid uid) {
        return database.read(sql -> sql.one(ONE_TRIP, LocalStore::trip, (Object) uid.bytes()));
    }

    private static TripInCanyon trip(ResultSet row) throws SQLException {
        CanyonName canyon = canyon(row);
        Uid uid = Uid.ofBytes(row.getBytes("uid"));
        Trip trip = Bodies.sound(uid, TripBody.read(uid, canyon.uid(), Bodies.reader(uid, row.getString("body"))));
        return new TripInCanyon(trip, canyon);
    }

    private static CanyonName canyon(ResultSet row) throws SQLException {
        return new CanyonName(
                Uid.ofBytes(row.getBytes("canyon")),
                row.getString("name"),
                row.getString("whereabouts"),
                row.getInt("invented") == 1);
    }

    /**
     * The sheets given out of one canyon.
     *
     * @param sheets newest first, those that were withdrawn too; not empty
     */
    public record SheetsOf(CanyonName canyon, List<Entry<SheetGiven>> sheets) {
        public SheetsOf {
            sheets = List.copyOf(sheets);
        }
    }

    /**
     * The sheets given out, canyon by canyon in the order of their names.
     *
     * @param canyon they are about; empty for all
     */
    public List<SheetsOf> sheets(Optional<Uid> canyon) {
        return database.read(sql -> {
            List<SheetsOf> all = new ArrayList<>();
            for (Found found : sql.all(
                    CANYONS_WITH_SHEETS, Found::of, canyon.map(Uid::bytes).orElse(null))) {
                Uid uid = found.canyon().uid();
                List<Entry<SheetGiven>> entries =
                        new EntryRows(sql).of(FactType.SHEET_GIVEN, found.key(), in -> SheetGivenBody.read(uid, in));
                all.add(new SheetsOf(found.canyon(), Amendments.settle(entries)));
            }
            return all;
        });
    }

    private record Found(long key, CanyonName canyon) {
        static Found of(ResultSet row) throws SQLException {
            return new Found(row.getLong("key"), LocalStore.canyon(row));
        }
    }

    /** The highest number that stands on a sheet given out; 0 where none was. */
    public long lastSheetNumber() {
        return database.read(LocalStore::lastSheetNumber);
    }

    static long lastSheetNumber(Sql sql) throws SQLException {
        return sql.one(LAST_NUMBER, row -> row.getLong(1)).orElse(0L);
    }
}
