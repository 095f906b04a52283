package thalweg.storage;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import thalweg.body.PartBody;
import thalweg.ledger.Uid;
import thalweg.logbook.Condition;
import thalweg.logbook.PartFinding;
import thalweg.logbook.PartRow;
import thalweg.logbook.PartState;
import thalweg.route.Exposure;
import thalweg.route.Part;
import thalweg.route.PartialDate;

/** Finds parts by what they are made of, over all canyons. */
public final class PartStore {

    /** So many are taken first, in the order of the index, and then put in order: sorting all could take seconds. */
    private static final String FIND = """
            with found as materialized (
                select p.uid, p.body, a.uid as anchor, s.uid as station, c.uid as canyon, c.name as canyon_name,
                       json_extract(s.body, '$.name') as station_name,
                       json_extract(s.body, '$.exposure') as exposure, c.invented, t.condition, t.seen_on,
                       t.contradictory, t.not_seen_since, t.entries, t.replaced_on,
                       c.sort, o.place as o_place, o.uid as o_uid, s.place as s_place, a.place as a_place, p.place
                  from %s
                  join part_state t on t.part = p.key
                 %s
                 limit ?
            )
            select *
              from found
             order by sort, canyon, o_place, o_uid, s_place, station, a_place, anchor, place, uid
            """;

    /** Parts by their keys. */
    static final String BY_KEYS = """
            select p.key, p.uid, p.body, a.uid as anchor, s.uid as station, c.uid as canyon, c.name as canyon_name,
                   json_extract(s.body, '$.name') as station_name,
                   json_extract(s.body, '$.exposure') as exposure, c.invented, t.condition, t.seen_on,
                   t.contradictory, t.not_seen_since, t.entries, t.replaced_on
              from %s
              join part_state t on t.part = p.key
             where p.key in (select value from json_each(?))
            """.formatted(Shown.PARTS);

    private static final String BY_WORDS = "join part_words w on w.rowid = p.key where part_words match ?";

    private final Database database;

    /**
     * @param database that is searched
     */
    public PartStore(Database database) {
        this.database = database;
    }

    /**
     * Parts for which all that is looked for holds, by canyon and along the line.
     *
     * @param most how many at the most; where there are more, which of them is left to chance
     */
    public List<PartRow> parts(PartFinding finding, int most) {
        Optional<String> question = question(finding);
        List<@Nullable Object> values = new ArrayList<>(question.stream().toList());
        values.add(most);
        String query = FIND.formatted(Shown.PARTS, question.isEmpty() ? "" : BY_WORDS);
        return database.read(sql -> sql.all(query, PartStore::row, values.toArray()));
    }

    /** What the index of words is asked; empty where nothing is. */
    static Optional<String> question(PartFinding finding) {
        return new Match()
                .spelled(finding.words())
                .exactly(
                        "kind",
                        finding.kind()
                                .map(kind -> kind.name().toLowerCase(Locale.ROOT))
                                .orElse(""))
                .words("material", finding.material())
                .spelled("size", finding.size())
                .spelled("standard", finding.standard())
                .spelled("maker", finding.maker())
                .spelled("batch", finding.batch())
                .question();
    }

    static PartRow row(ResultSet row) throws SQLException {
        Uid uid = Uid.ofBytes(row.getBytes("uid"));
        Optional<Part> part =
                PartBody.read(uid, Uid.ofBytes(row.getBytes("anchor")), "", Bodies.reader(uid, row.getString("body")));
        return new PartRow(
                Uid.ofBytes(row.getBytes("canyon")),
                row.getString("canyon_name"),
                Uid.ofBytes(row.getBytes("station")),
                row.getString("station_name"),
                exposure(row.getString("exposure")),
                row.getInt("invented") == 1,
                Bodies.sound(uid, part),
                state(row),
                date(row, "replaced_on"));
    }

    /** Only a newer version knows others. */
    private static Optional<Exposure> exposure(@Nullable String word) {
        return Arrays.stream(Exposure.values())
                .filter(one -> one.name().toLowerCase(Locale.ROOT).equals(word))
                .findFirst();
    }

    private static PartState state(ResultSet row) throws SQLException {
        int severity = row.getInt("condition");
        Optional<Condition> condition = row.wasNull() ? Optional.empty() : Optional.of(Condition.ofSeverity(severity));
        return new PartState(
                condition,
                date(row, "seen_on"),
                row.getInt("contradictory") == 1,
                date(row, "not_seen_since"),
                row.getInt("entries"));
    }

    private static Optional<PartialDate> date(ResultSet row, String column) throws SQLException {
        return Optional.ofNullable(row.getString(column)).map(PartialDate::parse);
    }
}
