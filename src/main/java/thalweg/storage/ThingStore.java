package thalweg.storage;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import thalweg.body.FactType;
import thalweg.body.ThingType;
import thalweg.ledger.Uid;

/**
 * Tells where things stand: in what, in which canyon, whether they are in use, and what is in them. The table of what a
 * thing is in has the name of the key that names it.
 */
public final class ThingStore {

    private static final String STANDING = """
            select t.removed, q.uid
              from %s t
              join %s q on q.key = t.parent
             where t.uid = ?
            """;

    private static final String STANDING_CANYON = """
            select removed, null
              from canyon
             where uid = ?
            """;

    private static final String STANDING_NOTE = """
            select removed, about
              from private_note
             where uid = ?
            """;

    private static final String THINGS_WITHIN = """
            select t.uid
              from %s t
              join %s q on q.key = t.parent
             where q.uid = ?
               and t.removed = 0
            """;

    private static final String FACTS_ABOUT = """
            select t.uid
              from %s t
              join %s q on q.key = t.%2$s
             where q.uid = ?
               and t.counts = 1
            """;

    private static final String NOTES_ABOUT = """
            select uid
              from private_note
             where about = ?
               and removed = 0
            """;

    private static final List<ThingType> CHILDREN =
            List.of(ThingType.OBSTACLE, ThingType.STATION, ThingType.ANCHOR, ThingType.PART, ThingType.TRIP);

    private final Database database;

    /**
     * @param database in which they are
     */
    public ThingStore(Database database) {
        this.database = database;
    }

    /** A thing and what it is in. */
    private record Standing(ThingType type, boolean removed, Optional<Uid> parent) {

        static Standing of(ThingType type, ResultSet row) throws SQLException {
            byte[] parent = row.getBytes(2);
            return new Standing(
                    type, row.getInt(1) == 1, parent == null ? Optional.empty() : Optional.of(Uid.ofBytes(parent)));
        }
    }

    private static Optional<Standing> standing(Sql sql, Uid thing) throws SQLException {
        for (ThingType type : ThingType.values()) {
            String query = switch (type) {
                case CANYON -> STANDING_CANYON;
                case PRIVATE_NOTE -> STANDING_NOTE;
                default -> STANDING.formatted(type.word(), type.parentKey());
            };
            Optional<Standing> found = sql.one(query, row -> Standing.of(type, row), (Object) thing.bytes());
            if (found.isPresent()) {
                return found;
            }
        }
        return Optional.empty();
    }

    /** What kind of thing that id stands for, in use or not; empty where nothing is known by it. */
    public Optional<ThingType> type(Uid thing) {
        return database.read(sql -> standing(sql, thing)).map(Standing::type);
    }

    /** Whether a thing is known and in use, and so is everything that it is in. */
    public boolean isInUse(Uid thing) {
        return database.read(sql -> {
            Optional<Standing> at = standing(sql, thing);
            while (at.isPresent() && !at.get().removed()) {
                if (at.get().parent().isEmpty()) {
                    return true;
                }
                at = standing(sql, at.get().parent().get());
            }
            return false;
        });
    }

    /** The canyon in which a thing is, or which it is; empty where nothing is known by that id. */
    public Optional<Uid> canyonOf(Uid thing) {
        return database.read(sql -> {
            Uid uid = thing;
            Optional<Standing> at = standing(sql, uid);
            while (at.isPresent() && at.get().parent().isPresent()) {
                uid = at.get().parent().get();
                at = standing(sql, uid);
            }
            return at.isPresent() ? Optional.of(uid) : Optional.empty();
        });
    }

    /** The things in use that are directly within a thing, and the entries about it that count. */
    public List<Uid> within(Uid thing) {
        return database.read(sql -> {
            List<Uid> within = new ArrayList<>(uids(sql, NOTES_ABOUT, thing));
            for (ThingType child : CHILDREN) {
                within.addAll(uids(sql, THINGS_WITHIN.formatted(child.word(), child.parentKey()), thing));
            }
            for (FactType fact : FactType.values()) {
                within.addAll(uids(
                        sql, FACTS_ABOUT.formatted(fact.word(), fact.owner().word()), thing));
            }
            return within;
        });
    }

    private static List<Uid> uids(Sql sql, String query, Uid thing) throws SQLException {
        return sql.all(query, row -> Uid.ofBytes(row.getBytes(1)), (Object) thing.bytes());
    }
}
