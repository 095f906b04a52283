package thalweg.storage;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import thalweg.body.AnalysisBody;
import thalweg.body.AnchorBody;
import thalweg.body.CanyonBody;
import thalweg.body.InspectionBody;
import thalweg.body.NoteBody;
import thalweg.body.ObstacleBody;
import thalweg.body.PartBody;
import thalweg.body.StationBody;
import thalweg.json.FieldReader;
import thalweg.ledger.Uid;
import thalweg.logbook.AnchorRecord;
import thalweg.logbook.CanyonRecord;
import thalweg.logbook.Entry;
import thalweg.logbook.LineRecord;
import thalweg.logbook.PartRecord;
import thalweg.logbook.StationRecord;
import thalweg.route.Anchor;
import thalweg.route.Canyon;
import thalweg.route.Obstacle;
import thalweg.route.Part;
import thalweg.route.Station;

/** Loads a canyon with everything in it. */
public final class RecordStore {

    private static final String CANYON = "select key, uid, body from canyon where uid = ?";

    private static final String CHILDREN = """
            select key, uid, body
              from %s
             where parent = ?
             order by place, uid
            """;

    private static final String FACTS = """
            select uid, author, at, body
              from %s
             where %s = ?
             order by last_day desc, at desc, uid
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

    /** The ids of all canyons, in the order of their names. */
    public List<Uid> canyons() {
        return database.read(
                sql -> sql.all("select uid from canyon order by sort, uid", row -> Uid.ofBytes(row.getBytes(1))));
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
        return new CanyonRecord(canyon, line);
    }

    private static List<StationRecord> stations(Sql sql, Row obstacle) throws SQLException {
        List<StationRecord> stations = new ArrayList<>();
        for (Row row : children(sql, "station", obstacle)) {
            Station station = Bodies.sound(row.uid(), StationBody.read(row.uid(), obstacle.uid(), "", row.reader()));
            stations.add(new StationRecord(
                    station,
                    anchors(sql, row),
                    facts(sql, "rigging_note", "station", row, NoteBody::read),
                    facts(sql, "rig_analysis", "station", row, AnalysisBody::read)));
        }
        return stations;
    }

    private static List<AnchorRecord> anchors(Sql sql, Row station) throws SQLException {
        List<AnchorRecord> anchors = new ArrayList<>();
        for (Row row : children(sql, "anchor", station)) {
            Anchor anchor = Bodies.sound(row.uid(), AnchorBody.read(row.uid(), station.uid(), "", row.reader()));
            List<PartRecord> parts = new ArrayList<>();
            for (Row child : children(sql, "part", row)) {
                Part part = Bodies.sound(child.uid(), PartBody.read(child.uid(), row.uid(), "", child.reader()));
                parts.add(PartRecord.of(part, facts(sql, "inspection", "part", child, InspectionBody::read)));
            }
            anchors.add(new AnchorRecord(anchor, parts));
        }
        return anchors;
    }

    private static <T> List<Entry<T>> facts(
            Sql sql, String table, String owner, Row about, BiFunction<Uid, FieldReader, Optional<T>> reader)
            throws SQLException {
        return sql.all(
                FACTS.formatted(table, owner),
                row -> {
                    Uid uid = Uid.ofBytes(row.getBytes("uid"));
                    FieldReader in = Bodies.reader(uid, row.getString("body"));
                    return new Entry<>(
                            uid,
                            Bodies.sound(uid, reader.apply(about.uid(), in)),
                            row.getString("author"),
                            row.getString("at"));
                },
                about.key());
    }
}
