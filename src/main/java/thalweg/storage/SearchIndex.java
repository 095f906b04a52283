package thalweg.storage;

import java.sql.SQLException;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import thalweg.body.CanyonBody;
import thalweg.body.PartBody;
import thalweg.body.ThingType;
import thalweg.ledger.Uid;
import thalweg.route.Canyon;
import thalweg.route.Part;
import thalweg.text.Fold;

/**
 * Keeps the words by which canyons, stations and parts are found. A station is found by its canyon's names too and a part
 * by both, so a change reaches everything below it.
 */
final class SearchIndex {

    /** The tables of words; each row has the key of the thing that it finds. */
    static final List<String> TABLES = List.of("canyon_words", "station_words", "part_words");

    private static final Pattern BETWEEN_LETTER_AND_DIGIT =
            Pattern.compile("(?<=\\p{L})(?=\\p{Nd})|(?<=\\p{Nd})(?=\\p{L})");

    private final Sql sql;
    private final Map<ThingType, Set<Long>> touched = new EnumMap<>(ThingType.class);
    private final Map<Long, String> canyonWords = new HashMap<>();

    SearchIndex(Sql sql) {
        this.sql = sql;
    }

    /** Takes every word out. */
    static void empty(Sql sql) throws SQLException {
        for (String table : TABLES) {
            sql.run("insert into " + table + " (" + table + ") values ('delete-all')");
        }
    }

    /** Remembers that the words of a thing may be others now. */
    void touch(ThingType type, long key) {
        touched.computeIfAbsent(type, kind -> new LinkedHashSet<>()).add(key);
    }

    private Set<Long> touched(ThingType type) {
        return touched.getOrDefault(type, Set.of());
    }

    /** Brings the words of everything touched up to date, and of everything below it. */
    void finish() throws SQLException {
        Set<Long> stations = new LinkedHashSet<>(touched(ThingType.STATION));
        addAll(stations, STATIONS_OF_CANYON, touched(ThingType.CANYON));
        addAll(stations, STATIONS_OF_OBSTACLE, touched(ThingType.OBSTACLE));
        Set<Long> parts = new LinkedHashSet<>(touched(ThingType.PART));
        addAll(parts, PARTS_OF_ANCHOR, touched(ThingType.ANCHOR));
        addAll(parts, PARTS_OF_STATION, stations);
        for (long canyon : touched(ThingType.CANYON)) {
            canyon(canyon);
        }
        for (long station : stations) {
            sql.all(STATION, row -> station(station, row.getString(1), row.getLong(2)), station);
        }
        for (long part : parts) {
            part(part);
        }
        touched.clear();
        canyonWords.clear();
    }

    private void addAll(Set<Long> keys, String query, Set<Long> above) throws SQLException {
        for (long key : above) {
            keys.addAll(sql.all(query, row -> row.getLong(1), key));
        }
    }

    private Canyon read(long key) throws SQLException {
        return sql.one(
                        "select uid, body from canyon where key = ?",
                        row -> {
                            Uid uid = Uid.ofBytes(row.getBytes(1));
                            return Bodies.sound(uid, CanyonBody.read(uid, Bodies.reader(uid, row.getString(2))));
                        },
                        key)
                .orElseThrow();
    }

    private void canyon(long key) throws SQLException {
        Canyon canyon = read(key);
        sql.run(PUT_CANYON, key, names(canyon), words(canyon.region()), words(canyon.country()));
    }

    private static String names(Canyon canyon) {
        return words(canyon.name() + " " + String.join(" ", canyon.otherNames()));
    }

    private String wordsOfCanyon(long key) throws SQLException {
        String known = canyonWords.get(key);
        if (known == null) {
            Canyon canyon = read(key);
            known = names(canyon) + " " + words(canyon.region() + " " + canyon.country());
            canyonWords.put(key, known);
        }
        return known;
    }

    private int station(long key, String name, long canyon) throws SQLException {
        return sql.run(PUT_STATION, key, words(name), wordsOfCanyon(canyon));
    }

    private void part(long key) throws SQLException {
        record Row(Part part, String station, long canyon) {}
        Optional<Row> found = sql.one(
                PART,
                row -> {
                    Uid uid = Uid.ofBytes(row.getBytes(1));
                    Uid anchor = Uid.ofBytes(row.getBytes(3));
                    Optional<Part> part = PartBody.read(uid, anchor, "", Bodies.reader(uid, row.getString(2)));
                    return new Row(Bodies.sound(uid, part), row.getString(4), row.getLong(5));
                },
                key);
        Part part = found.orElseThrow().part();
        sql.run(
                PUT_PART,
                key,
                words(part.label()),
                words(kind(part)),
                words(part.hardware().material()),
                spelled(part.hardware().size()),
                spelled(part.hardware().standard()),
                spelled(part.hardware().maker()),
                spelled(part.hardware().batch()),
                words(part.note()),
                words(found.orElseThrow().station()) + " "
                        + wordsOfCanyon(found.orElseThrow().canyon()));
    }

    private static String kind(Part part) {
        return part.kind().name().toLowerCase(Locale.ROOT);
    }

    private static String words(String text) {
        return String.join(" ", Fold.indexed(text));
    }

    /** In one as well and in pieces: whoever reads a mark writes "EN 959" or "EN959", and both are to be found by either. */
    private static String spelled(String text) {
        return words(text) + " " + Fold.joined(text) + " "
                + words(BETWEEN_LETTER_AND_DIGIT.matcher(text).replaceAll(" "));
    }

    private static final String STATIONS_OF_CANYON = """
            select s.key
              from obstacle o
              join station s on s.parent = o.key
             where o.parent = ?
            """;

    private static final String STATIONS_OF_OBSTACLE = "select key from station where parent = ?";

    private static final String PARTS_OF_STATION = """
            select p.key
              from anchor a
              join part p on p.parent = a.key
             where a.parent = ?
            """;

    private static final String PARTS_OF_ANCHOR = "select key from part where parent = ?";

    private static final String STATION = """
            select json_extract(s.body, '$.name'), o.parent
              from station s
              join obstacle o on o.key = s.parent
             where s.key = ?
            """;

    private static final String PART = """
            select p.uid, p.body, a.uid, json_extract(s.body, '$.name'), o.parent
              from part p
              join anchor a on a.key = p.parent
              join station s on s.key = a.parent
              join obstacle o on o.key = s.parent
             where p.key = ?
            """;

    private static final String PUT_CANYON =
            "insert or replace into canyon_words (rowid, names, region, country) values (?, ?, ?, ?)";

    private static final String PUT_STATION =
            "insert or replace into station_words (rowid, own, canyon) values (?, ?, ?)";

    private static final String PUT_PART = """
            insert or replace into part_words
                   (rowid, label, kind, material, size, standard, maker, batch, note, place)
            values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?)
            """;
}
