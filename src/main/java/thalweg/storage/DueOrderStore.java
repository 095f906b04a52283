package thalweg.storage;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import thalweg.ledger.Uid;
import thalweg.logbook.DueKey;
import thalweg.logbook.LookGroup;
import thalweg.logbook.PartRow;

/**
 * Hands out parts in the order in which they are due, a piece at a time, so that the first are there at once however many
 * there are. What they are due for is for the rules to say; here is only since when each group was seen, or is there.
 */
public final class DueOrderStore {

    static final String LOOKS = """
            select part, look_group, seen_from, since_from, canyon_sort, canyon, position
              from part_due
             where look_group = ?
               and (seen_from, canyon_sort, canyon, position) > (?, ?, ?, ?)
               and seen_from <= ?
             order by seen_from, canyon_sort, canyon, position
             limit ?
            """;

    static final String TEXTILE = """
            select part, look_group, seen_from, since_from, canyon_sort, canyon, position
              from part_due
             where (since_from, canyon_sort, canyon, position) > (?, ?, ?, ?)
               and since_from <= ?
             order by since_from, canyon_sort, canyon, position
             limit ?
            """;

    /** Textile of unknown age; a part that is due for a look, or to be mended, is not among it. */
    static final String AGELESS = """
            select part, look_group, seen_from, since_from, canyon_sort, canyon, position
              from part_due
             where (since_from, canyon_sort, canyon, position) > (?, ?, ?, ?)
               and since_from <= ''
               and seen_from > case look_group %s end
             order by since_from, canyon_sort, canyon, position
             limit ?
            """;

    private static final String COUNT_LOOKS = """
            select count(*)
              from part_due
             where look_group = ?
               and seen_from <= ?
            """;

    private static final String COUNT_TEXTILE = """
            select count(*)
              from part_due
             where since_from >= ?
               and since_from <= ?
               and seen_from > case look_group %s end
            """;

    /** Before every day, and after the empty text of what nobody has seen. */
    private static final String FIRST = "0";

    private static final byte[] NO_CANYON = {};

    private final Database database;

    /**
     * @param database that is read
     */
    public DueOrderStore(Database database) {
        this.database = database;
    }

    /** Parts of a group that nobody has seen, along the lines; those after one, at most so many. */
    public List<DueKey> unseen(LookGroup group, Optional<DueKey> after, int most) {
        return piece(LOOKS, List.of(group.code()), after, DueKey::seen, "", List.of(""), most);
    }

    /** Parts of a group that were last seen by that day, longest ago first; those after one, at most so many. */
    public List<DueKey> seen(LookGroup group, LocalDate by, Optional<DueKey> after, int most) {
        return piece(LOOKS, List.of(group.code()), after, DueKey::seen, FIRST, List.of(by.toString()), most);
    }

    /** Textile that is there since that day or longer, longest first; that after one, at most so many. */
    public List<DueKey> textile(LocalDate by, Optional<DueKey> after, int most) {
        return piece(TEXTILE, List.of(), after, DueKey::since, FIRST, List.of(by.toString()), most);
    }

    /**
     * Textile of unknown age along the lines, of which nothing else is due; that after one, at most so many.
     *
     * @param seenBy of every group, the last day on which a part that is due may have been seen
     */
    public List<DueKey> ageless(Map<LookGroup, LocalDate> seenBy, Optional<DueKey> after, int most) {
        return piece(AGELESS.formatted(cases(seenBy)), List.of(), after, DueKey::since, "", cased(seenBy), most);
    }

    private List<DueKey> piece(
            String query,
            List<?> before,
            Optional<DueKey> after,
            Function<DueKey, Optional<LocalDate>> from,
            String start,
            List<?> more,
            int most) {
        List<@Nullable Object> values = new ArrayList<>(before);
        values.add(after.map(key -> from.apply(key).map(LocalDate::toString).orElse(""))
                .orElse(start));
        values.add(after.map(DueKey::canyonSort).orElse(""));
        values.add(after.map(key -> key.canyon().bytes()).orElse(NO_CANYON));
        values.add(after.map(DueKey::position).orElse(0));
        values.addAll(more);
        values.add(most);
        return database.read(sql -> sql.all(query, DueOrderStore::key, values.toArray()));
    }

    private static DueKey key(ResultSet row) throws SQLException {
        return new DueKey(
                row.getLong("part"),
                LookGroup.of(row.getInt("look_group")),
                day(row.getString("seen_from")),
                day(row.getString("since_from")),
                row.getString("canyon_sort"),
                Uid.ofBytes(row.getBytes("canyon")),
                row.getInt("position"));
    }

    private static Optional<LocalDate> day(@Nullable String text) {
        return text == null || text.isEmpty() ? Optional.empty() : Optional.of(LocalDate.parse(text));
    }

    private static String cases(Map<LookGroup, LocalDate> seenBy) {
        return seenBy.keySet().stream().map(group -> "when ? then ?").collect(Collectors.joining(" "));
    }

    private static List<Object> cased(Map<LookGroup, LocalDate> seenBy) {
        List<Object> values = new ArrayList<>();
        seenBy.forEach((group, by) -> {
            values.add(group.code());
            values.add(by.toString());
        });
        return values;
    }

    /**
     * How many parts are due.
     *
     * @param seenBy of every group, the last day on which a part that is due may have been seen
     * @param placedBy the last day since which textile that is due may be there
     */
    public int due(Map<LookGroup, LocalDate> seenBy, LocalDate placedBy) {
        int looks = seenBy.entrySet().stream()
                .mapToInt(group -> count(
                        COUNT_LOOKS,
                        List.of(group.getKey().code(), group.getValue().toString())))
                .sum();
        return looks + textileAlone(seenBy, FIRST, placedBy.toString());
    }

    /** How many are textile of unknown age of which nothing else is due. */
    public int ageless(Map<LookGroup, LocalDate> seenBy) {
        return textileAlone(seenBy, "", "");
    }

    private int textileAlone(Map<LookGroup, LocalDate> seenBy, String from, String to) {
        List<Object> values = new ArrayList<>(List.of(from, to));
        values.addAll(cased(seenBy));
        return count(COUNT_TEXTILE.formatted(cases(seenBy)), values);
    }

    private int count(String query, List<?> values) {
        return database.read(sql -> sql.one(query, row -> row.getInt(1), values.toArray()))
                .orElse(0);
    }

    /** Those parts by their keys, in their order; one that is gone meanwhile is missing. */
    public Map<Long, PartRow> rows(List<DueKey> keys) {
        String array = keys.stream().map(key -> Long.toString(key.part())).collect(Collectors.joining(",", "[", "]"));
        Map<Long, PartRow> found = new HashMap<>();
        database.read(
                sql -> sql.all(PartStore.BY_KEYS, row -> found.put(row.getLong("key"), PartStore.row(row)), array));
        Map<Long, PartRow> rows = new LinkedHashMap<>();
        keys.forEach(key -> Optional.ofNullable(found.get(key.part())).ifPresent(row -> rows.put(key.part(), row)));
        return rows;
    }
}
