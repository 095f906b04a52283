package thalweg.storage;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import thalweg.body.AnalysisBody;
import thalweg.body.AnchorBody;
import thalweg.body.CanyonBody;
import thalweg.body.FactType;
import thalweg.body.InspectionBody;
import thalweg.body.NoteBody;
import thalweg.body.ObstacleBody;
import thalweg.body.PartBody;
import thalweg.body.PrivateNoteBody;
import thalweg.body.RoundBody;
import thalweg.body.SheetGivenBody;
import thalweg.body.StationBody;
import thalweg.body.TripBody;
import thalweg.json.FieldReader;
import thalweg.ledger.Uid;
import thalweg.logbook.AnchorRecord;
import thalweg.logbook.CanyonRecord;
import thalweg.logbook.Entry;
import thalweg.logbook.LineRecord;
import thalweg.logbook.LocalRecord;
import thalweg.logbook.PartRecord;
import thalweg.logbook.PrivateNote;
import thalweg.logbook.SheetGiven;
import thalweg.logbook.StationRecord;
import thalweg.logbook.Trip;
import thalweg.route.Anchor;
import thalweg.route.Canyon;
import thalweg.route.Obstacle;
import thalweg.route.Part;
import thalweg.route.Station;

/** Loads a canyon with everything in it. */
public final class RecordStore {

    private static final String CANYON = "select key, uid, body from canyon where uid = ? and removed = 0";

    private static final String CHILDREN = """
        select key, uid, body
          from %s
         where parent = ?
           and removed = 0
         order by place, uid
        """;

    private static final String TRIPS = """
        select key, uid, body
          from trip
         where parent = ?
           and removed = 0
         order by place desc, uid
        """;

    private static final String PRIVATE_NOTES = """
        select n.uid, n.about, n.body
          from private_note n
         where n.removed = 0
           and (n.about = ?1
                or n.about in (select o.uid from obstacle o where o.parent = ?2 and o.removed = 0)
                or n.about in (select s.uid
                                 from obstacle o
                                 join station s on s.parent = o.key
                                where o.parent = ?2
                                  and o.removed = 0
                                  and s.removed = 0))
         order by n.uid
        """;

    private final Database database;

    /**
     * @param database that is read
     */
    public RecordStore(Database database) {
        this.database = database;
    }

    /** The canyon of that id, read at one moment; empty where there is none. */
    public Optional<CanyonRecord> canyon(Uid uid) {
        return database.read(sql -> {
            Optional<Row> row = sql.one(CANYON, Row::of, (Object) uid.bytes());
            return row.isEmpty() ? Optional.empty() : Optional.of(canyon(sql, row.get()));
        });
    }

    /** What this database keeps to itself around a canyon; nothing where there is no such canyon. */
    public LocalRecord local(Uid uid) {
        return database.read(sql -> {
            Optional<Row> row = sql.one(CANYON, Row::of, (Object) uid.bytes());
            return row.isEmpty() ? LocalRecord.NOTHING : local(sql, row.get());
        });
    }

    private static LocalRecord local(Sql sql, Row canyon) throws SQLException {
        List<Trip> trips = new ArrayList<>();
        for (Row row : sql.all(TRIPS, Row::of, canyon.key())) {
            trips.add(Bodies.sound(row.uid(), TripBody.read(row.uid(), canyon.uid(), row.reader())));
        }
        List<PrivateNote> notes =
                sql.all(PRIVATE_NOTES, RecordStore::privateNote, canyon.uid().bytes(), canyon.key());
        List<Entry<SheetGiven>> sheets =
                new EntryRows(sql).of(FactType.SHEET_GIVEN, canyon.key(), in -> SheetGivenBody.read(canyon.uid(), in));
        return new LocalRecord(trips, sheets, notes);
    }

    private static PrivateNote privateNote(ResultSet row) throws SQLException {
        Uid uid = Uid.ofBytes(row.getBytes("uid"));
        Uid about = Uid.ofBytes(row.getBytes("about"));
        return Bodies.sound(uid, PrivateNoteBody.read(uid, about, Bodies.reader(uid, row.getString("body"))));
    }

    /** The ids of all canyons, in the order of their names. */
    public List<Uid> canyons() {
        return database.read(sql -> sql.all(
                "select uid from canyon where removed = 0 order by sort, uid", row -> Uid.ofBytes(row.getBytes(1))));
    }

    private record Row(long key, Uid uid, String body) {
        static Row of(ResultSet row) throws SQLException {
            return new Row(row.getLong("key"), Uid.ofBytes(row.getBytes("uid")), row.getString("body"));
        }

        FieldReader reader() {
            return Bodies.reader(uid, body);
        }
    }

    private static List<Row> children(Sql sql, String table, Row parent) throws SQLException {
        return sql.all(CHILDREN.formatted(table), Row::of, parent.key());
    }

    private static CanyonRecord canyon(Sql sql, Row row) throws SQLException {
        Canyon canyon = Bodies.sound(row.uid(), CanyonBody.read(row.uid(), row.reader()));
        List<LineRecord> line = new ArrayList<>();
        for (Row child : children(sql, "obstacle", row)) {
            Obstacle obstacle =
                    Bodies.sound(child.uid(), ObstacleBody.read(child.uid(), row.uid(), "", child.reader()));
            line.add(new LineRecord(line.size() + 1, obstacle, stations(sql, child)));
        }
        return new CanyonRecord(
                canyon, line, new EntryRows(sql).of(FactType.ROUND, row.key(), in -> RoundBody.read(row.uid(), in)));
    }

    private static List<StationRecord> stations(Sql sql, Row obstacle) throws SQLException {
        List<StationRecord> stations = new ArrayList<>();
        EntryRows entries = new EntryRows(sql);
        for (Row row : children(sql, "station", obstacle)) {
            Station station = Bodies.sound(row.uid(), StationBody.read(row.uid(), obstacle.uid(), "", row.reader()));
            stations.add(new StationRecord(
                    station,
                    anchors(sql, row),
                    entries.of(FactType.RIGGING_NOTE, row.key(), in -> NoteBody.read(row.uid(), in)),
                    entries.of(FactType.RIG_ANALYSIS, row.key(), in -> AnalysisBody.read(row.uid(), in))));
        }
        return stations;
    }

    private static List<AnchorRecord> anchors(Sql sql, Row station) throws SQLException {
        List<AnchorRecord> anchors = new ArrayList<>();
        EntryRows entries = new EntryRows(sql);
        for (Row row : children(sql, "anchor", station)) {
            Anchor anchor = Bodies.sound(row.uid(), AnchorBody.read(row.uid(), station.uid(), "", row.reader()));
            List<PartRecord> parts = new ArrayList<>();
            for (Row child : children(sql, "part", row)) {
                Part part = Bodies.sound(child.uid(), PartBody.read(child.uid(), row.uid(), "", child.reader()));
                parts.add(PartRecord.of(
                        part,
                        entries.of(FactType.INSPECTION, child.key(), in -> InspectionBody.read(child.uid(), in))));
            }
            anchors.add(new AnchorRecord(anchor, parts));
        }
        return anchors;
    }
}
