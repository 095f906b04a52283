package thalweg.storage;

import java.sql.SQLException;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import thalweg.body.AnchorBody;
import thalweg.body.CanyonBody;
import thalweg.body.ObstacleBody;
import thalweg.body.PartBody;
import thalweg.body.PrivateNoteBody;
import thalweg.body.StationBody;
import thalweg.body.ThingType;
import thalweg.body.TripBody;
import thalweg.json.FieldReader;
import thalweg.json.Findings;
import thalweg.json.JsonText;
import thalweg.ledger.Fact;
import thalweg.ledger.Revision;
import thalweg.ledger.Uid;
import thalweg.logbook.Trip;
import thalweg.route.Anchor;
import thalweg.route.Canyon;
import thalweg.route.Obstacle;
import thalweg.route.ObstacleKind;
import thalweg.route.Part;
import thalweg.route.Station;
import thalweg.text.Fold;
import thalweg.units.Length;

/** Derives the query tables from revisions and facts as they are added, in the same transaction. */
final class Derived {

    /** Sorts after every day. */
    private static final String NO_DAY = "9999";

    private final Sql sql;
    private final Summaries summaries;
    private final DerivedFacts facts;
    private final SearchIndex index;
    private final Set<Long> touchedParts = new LinkedHashSet<>();
    private final Set<Long> touchedCanyons = new LinkedHashSet<>();

    Derived(Sql sql) {
        this.sql = sql;
        this.summaries = new Summaries(sql);
        this.facts = new DerivedFacts(sql);
        this.index = new SearchIndex(sql);
    }

    /** Shows the revision's body as the thing's present state. */
    void show(Revision revision) throws SQLException {
        Optional<ThingType> type = ThingType.of(revision.type());
        if (type.isEmpty()) {
            return;
        }
        touchCanyonOf(type.get(), revision.thing());
        switch (type.get()) {
            case CANYON -> canyon(revision);
            case OBSTACLE -> obstacle(revision);
            case STATION -> station(revision);
            case ANCHOR -> anchor(revision);
            case PART -> part(revision);
            case TRIP -> trip(revision);
            case PRIVATE_NOTE -> privateNote(revision);
        }
        touchCanyonOf(type.get(), revision.thing());
        index.touch(type.get(), keyOf(type.get().word(), revision.thing()).orElseThrow());
    }

    private void canyon(Revision revision) throws SQLException {
        Canyon canyon = read(CanyonBody.read(revision.thing(), reader(revision)), revision.thing());
        sql.run(
                UPSERT_CANYON,
                revision.thing().bytes(),
                revision.hash().bytes(),
                canyon.name(),
                canyon.whereabouts(),
                canyon.french().map(grade -> grade.print()).orElse(""),
                canyon.american().map(grade -> grade.print()).orElse(""),
                canyon.longestDrop().map(Length::inCentimetres).orElse(null),
                canyon.invented() ? 1 : 0,
                Fold.fold(canyon.name()),
                JsonText.canonical(revision.body()),
                revision.deleted() ? 1 : 0);
        Measures.keep(sql, canyon);
    }

    private void obstacle(Revision revision) throws SQLException {
        Uid uid = revision.thing();
        Obstacle obstacle = read(ObstacleBody.read(uid, parent(revision, "canyon"), "", reader(revision)), uid);
        long key = child("obstacle", "canyon", obstacle.order(), revision);
        boolean drop = obstacle.kind() == ObstacleKind.DROP;
        Long height = drop ? obstacle.height().map(Length::inCentimetres).orElse(null) : null;
        sql.run(OBSTACLE_DROP, height, drop && height == null ? 1 : 0, key);
    }

    private void station(Revision revision) throws SQLException {
        Uid uid = revision.thing();
        Station station = read(StationBody.read(uid, parent(revision, "obstacle"), "", reader(revision)), uid);
        long key = child("station", "obstacle", station.order(), revision);
        sql.run("update station set sort = ? where key = ?", Fold.fold(station.name()), key);
    }

    private void anchor(Revision revision) throws SQLException {
        Uid uid = revision.thing();
        Anchor anchor = read(AnchorBody.read(uid, parent(revision, "station"), "", reader(revision)), uid);
        child("anchor", "station", anchor.order(), revision);
    }

    private void part(Revision revision) throws SQLException {
        Uid uid = revision.thing();
        Part part = read(PartBody.read(uid, parent(revision, "anchor"), "", reader(revision)), uid);
        touchedParts.add(child("part", "anchor", part.order(), revision));
    }

    private static Uid parent(Revision revision, String key) {
        return Uid.parse(reader(revision).text(key, 36))
                .orElseThrow(() -> new IllegalArgumentException(revision.type() + " names no " + key));
    }

    /** Inserts or updates the row of a thing under its parent; the table has the name of the thing's type. */
    private long child(String table, String parentTable, String place, Revision revision) throws SQLException {
        long parentKey = keyOf(parentTable, parent(revision, parentTable))
                .orElseThrow(
                        () -> new IllegalArgumentException("the " + parentTable + " of a " + table + " is missing"));
        sql.run(
                UPSERT_CHILD.formatted(table),
                revision.thing().bytes(),
                revision.hash().bytes(),
                parentKey,
                place,
                JsonText.canonical(revision.body()),
                revision.deleted() ? 1 : 0);
        return keyOf(table, revision.thing()).orElseThrow();
    }

    private void trip(Revision revision) throws SQLException {
        Uid uid = revision.thing();
        Trip trip = read(TripBody.read(uid, parent(revision, "canyon"), reader(revision)), uid);
        child("trip", "canyon", trip.on().map(date -> date.latest().toString()).orElse(NO_DAY), revision);
    }

    private void privateNote(Revision revision) throws SQLException {
        Uid uid = revision.thing();
        Uid about = parent(revision, PrivateNoteBody.PARENT);
        read(PrivateNoteBody.read(uid, about, reader(revision)), uid);
        sql.run(
                UPSERT_PRIVATE_NOTE,
                uid.bytes(),
                revision.hash().bytes(),
                about.bytes(),
                JsonText.canonical(revision.body()),
                revision.deleted() ? 1 : 0);
    }

    /** Shows a fact among those of its thing. */
    void show(Fact fact) throws SQLException {
        Optional<DerivedFacts.About> about = facts.show(fact);
        if (about.isEmpty()) {
            return;
        }
        ThingType owner = about.get().type().owner();
        long key = about.get().ownerKey();
        touchedCanyons.addAll(sql.all(canyonOf(owner).formatted("key"), row -> row.getLong(1), key));
        if (owner == ThingType.PART) {
            touchedParts.add(key);
        }
    }

    /**
     * Brings the kept summaries and the index of words up to date; call it once, at the end of the transaction.
     *
     * @return the keys of the canyons that were touched
     */
    Set<Long> finish() throws SQLException {
        for (long part : touchedParts) {
            summaries.keepPart(part);
        }
        for (long canyon : touchedCanyons) {
            summaries.keepCanyon(canyon);
        }
        index.finish();
        return touchedCanyons;
    }

    /** Asked before a change as well as after it: a thing may move from one canyon to another. */
    private void touchCanyonOf(ThingType type, Uid uid) throws SQLException {
        touchedCanyons.addAll(sql.all(canyonOf(type).formatted("uid"), row -> row.getLong(1), (Object) uid.bytes()));
    }

    private static String canyonOf(ThingType type) {
        return switch (type) {
            case CANYON -> "select c.key from canyon c where c.%s = ?";
            case OBSTACLE -> "select o.parent from obstacle o where o.%s = ?";
            case STATION -> "select o.parent from station s join obstacle o on o.key = s.parent where s.%s = ?";
            case ANCHOR -> ANCHOR_CANYON;
            case PART -> PART_CANYON;
            case TRIP -> "select t.parent from trip t where t.%s = ?";
            case PRIVATE_NOTE -> PRIVATE_NOTE_CANYON;
        };
    }

    private Optional<Long> keyOf(String table, Uid uid) throws SQLException {
        return sql.one("select key from " + table + " where uid = ?", row -> row.getLong(1), (Object) uid.bytes());
    }

    private static FieldReader reader(Revision revision) {
        return FieldReader.of(revision.body(), new Findings());
    }

    /** Services check what they append; a body that cannot be read here is a bug, and the transaction is undone. */
    private static <T> T read(Optional<T> record, Uid uid) {
        return record.orElseThrow(() -> new IllegalArgumentException("the body of " + uid.text() + " breaks a rule"));
    }

    /** Every query table but the index of words, children first. */
    static final List<String> TABLES = List.of(
            "part_due",
            "station_state",
            "canyon_state",
            "part_state",
            "rig_analysis",
            "rigging_note",
            "inspection",
            "round",
            "sheet_given",
            "withdrawal",
            "trip",
            "private_note",
            "part",
            "anchor",
            "station",
            "obstacle",
            "canyon");

    private static final String UPSERT_CANYON = """
            insert into canyon (uid, head, name, whereabouts, french, american, longest_drop_cm, invented, sort,
                   body, removed)
            values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)
                on conflict (uid) do update
               set head = excluded.head, name = excluded.name, whereabouts = excluded.whereabouts,
                   french = excluded.french, american = excluded.american,
                   longest_drop_cm = excluded.longest_drop_cm, invented = excluded.invented,
                   sort = excluded.sort, body = excluded.body,
                   removed = excluded.removed
            """;

    private static final String UPSERT_CHILD = """
            insert into %1$s (uid, head, parent, place, body, removed)
            values (?, ?, ?, ?, ?, ?)
                on conflict (uid) do update
               set head = excluded.head, parent = excluded.parent, place = excluded.place, body = excluded.body,
                   removed = excluded.removed
            """;

    private static final String OBSTACLE_DROP = "update obstacle set drop_cm = ?, unmeasured = ? where key = ?";

    private static final String UPSERT_PRIVATE_NOTE = """
            insert into private_note (uid, head, about, body, removed)
            values (?, ?, ?, ?, ?)
                on conflict (uid) do update
               set head = excluded.head, about = excluded.about, body = excluded.body, removed = excluded.removed
            """;

    private static final String ANCHOR_CANYON = """
            select o.parent
              from anchor a
              join station s on s.key = a.parent
              join obstacle o on o.key = s.parent
             where a.%s = ?
            """;

    private static final String PART_CANYON = """
            select o.parent
              from part p
              join anchor a on a.key = p.parent
              join station s on s.key = a.parent
              join obstacle o on o.key = s.parent
             where p.%s = ?
            """;

    /** A private note is about a canyon, a place or a station. */
    private static final String PRIVATE_NOTE_CANYON = """
            select coalesce(
                       (select c.key from canyon c where c.uid = n.about),
                       (select o.parent from obstacle o where o.uid = n.about),
                       (select o.parent from station s join obstacle o on o.key = s.parent where s.uid = n.about))
              from private_note n
             where n.%s = ?
            """;
}
