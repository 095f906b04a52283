package thalweg.storage;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import thalweg.ledger.Uid;
import thalweg.logbook.Condition;
import thalweg.logbook.DueCandidates;
import thalweg.logbook.PartFinding;
import thalweg.logbook.PartRow;
import thalweg.logbook.RowOrder;
import thalweg.route.PartKind;

/** Hands out the parts that may be due one after the other, so that a large database is never in memory. */
public final class DueStore {

    /** A month or a year is a beginning of its days, so that it compares as its first day. */
    private static final String EACH = """
            select p.uid, p.body, a.uid as anchor, s.uid as station, c.uid as canyon, c.name as canyon_name,
                   json_extract(s.body, '$.name') as station_name,
                   json_extract(s.body, '$.exposure') as exposure, c.invented, t.condition, t.seen_on,
                   t.contradictory, t.not_seen_since, t.entries, t.replaced_on
              from %s
              join part_state t on t.part = p.key
             %s
               and (t.condition > ? or t.contradictory = 1 or t.seen_on is null or t.seen_on <= ?
                    or (json_extract(p.body, '$.kind') in (%s)
                        and (json_extract(p.body, '$.placed') is null or json_extract(p.body, '$.placed') <= ?
                             or t.replaced_on <= ?)))
             order by c.sort, c.uid, o.place, o.uid, s.place, s.uid, a.place, a.uid, p.place, p.uid
            """;

    private static final String CANYONS = """
            select distinct c.uid
              from %s
             %s
            """;

    private static final String BY_WORDS = "join part_words w on w.rowid = p.key where part_words match ?";
    private static final String ALL = "where 1";
    private static final String IN_CANYON = " and c.uid = ?";

    private static final String AT_STATIONS = "where s.key in (select value from json_each(?))";

    private final Database database;

    /**
     * @param database that is asked
     */
    public DueStore(Database database) {
        this.database = database;
    }

    /**
     * Uses the parts that may be due, by canyon and along the line.
     *
     * @param canyon whose, if not those of all
     */
    public void each(PartFinding finding, Optional<Uid> canyon, DueCandidates which, Consumer<PartRow> use) {
        // Words are found first, wherever they are; without any, the order of the indexes saves sorting all.
        boolean searched = PartStore.question(finding).isPresent();
        each(searched ? Shown.PARTS : Shown.PARTS_DOWN, Asked.of(finding, canyon), which, use);
    }

    private void each(String from, Asked asked, DueCandidates which, Consumer<PartRow> use) {
        List<@Nullable Object> values = new ArrayList<>(asked.values());
        values.add(Condition.SOUND.severity());
        values.add(which.seenBy().toString());
        which.textile().forEach(kind -> values.add(word(kind)));
        values.add(which.placedBy().toString());
        values.add(which.placedBy().toString());
        String kinds = which.textile().stream().map(kind -> "?").collect(Collectors.joining(", "));
        String query = EACH.formatted(from, asked.where(), kinds);
        database.read(sql -> {
            sql.each(query, row -> use.accept(PartStore.row(row)), values.toArray());
            return true;
        });
    }

    /** Uses the parts of some stations that may be due, by their keys. */
    public void each(RowOrder stations, DueCandidates which, Consumer<PartRow> use) {
        each(Shown.PARTS, new Asked(AT_STATIONS, List.of(Sql.array(stations))), which, use);
    }

    /** Whether there is any part for which that holds, due or not, in a canyon that is wanted. */
    public boolean any(PartFinding finding, Optional<Uid> canyon, Predicate<Uid> wanted) {
        Asked asked = Asked.of(finding, canyon);
        String query = CANYONS.formatted(Shown.PARTS, asked.where());
        List<Uid> canyons = database.read(sql -> sql.all(
                query, row -> Uid.ofBytes(row.getBytes(1)), asked.values().toArray()));
        return canyons.stream().anyMatch(wanted);
    }

    private static String word(PartKind kind) {
        return kind.name().toLowerCase(Locale.ROOT);
    }

    /**
     * What narrows a query down.
     *
     * @param where joins and conditions
     * @param values for its marks, in order
     */
    private record Asked(String where, List<@Nullable Object> values) {

        static Asked of(PartFinding finding, Optional<Uid> canyon) {
            Optional<String> question = PartStore.question(finding);
            List<@Nullable Object> values = new ArrayList<>(question.stream().toList());
            canyon.ifPresent(uid -> values.add(uid.bytes()));
            return new Asked((question.isPresent() ? BY_WORDS : ALL) + (canyon.isPresent() ? IN_CANYON : ""), values);
        }
    }
}
