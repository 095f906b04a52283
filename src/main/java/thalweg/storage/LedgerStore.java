package thalweg.storage;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import thalweg.body.FactType;
import thalweg.fault.ChangedMeanwhileException;
import thalweg.fault.Sentence;
import thalweg.fault.StoreException;
import thalweg.json.JsonText;
import thalweg.ledger.Fact;
import thalweg.ledger.Hash;
import thalweg.ledger.LedgerText;
import thalweg.ledger.Revision;
import thalweg.ledger.Uid;
import thalweg.progress.Progress;

/** The ledger in the database: it is only ever added to, and what is shown follows in the same transaction. */
public final class LedgerStore {

    /** What follows a revision is a revision of the same thing: to look among all that follow any would take ever longer. */
    static final String HEADS = """
        select r.hash, r.canonical
          from revision r
         where r.thing = ?
           and not exists (select 1
                             from revision q
                            cross join revision_parent p on p.revision = q.key and p.parent = r.hash
                            where q.thing = r.thing
                              and q.gen > r.gen)
         order by r.gen desc, r.hash
        """;

    private static final String ABOUT = "select canonical from fact where about = ? and type = ? order by key";

    private static final String INSERT_REVISION = """
        insert into revision (hash, thing, type, gen, canonical)
        values (?, ?, ?, ?, ?)
        """;

    private static final String INSERT_PARENT = "insert into revision_parent (revision, parent) values (?, ?)";

    private static final String INSERT_FACT = """
        insert into fact (uid, type, about, canonical)
        values (?, ?, ?, ?)
            on conflict (uid) do nothing
        """;

    private final Database database;

    /**
     * @param database whose ledger it is
     */
    public LedgerStore(Database database) {
        this.database = database;
    }

    /** The latest state of a thing, if it is known. */
    public Optional<Revision> head(Uid thing) {
        return database.read(sql -> head(sql, thing));
    }

    private static Optional<Revision> head(Sql sql, Uid thing) throws SQLException {
        return sql.one(HEADS, row -> revision(thing, row), (Object) thing.bytes());
    }

    private static Revision revision(Uid thing, ResultSet row) throws SQLException {
        Hash name = Hash.ofBytes(row.getBytes("hash"));
        return LedgerText.revision(row.getString("canonical"))
                .filter(revision -> revision.hash().equals(name))
                .orElseThrow(() -> altered(thing));
    }

    private static StoreException altered(Uid thing) {
        return new StoreException(Sentence.of(
                "The ledger entry of {0} cannot be read: it was altered outside this program; nothing was"
                        + " changed. Put a backup copy of the database in its place.",
                thing.text()));
    }

    /** Whether that fact is known, or another that says the same of the same thing. */
    public boolean says(Fact fact) {
        return database
                .read(sql ->
                        sql.all(ABOUT, row -> row.getString(1), fact.about().bytes(), fact.type()))
                .stream()
                .flatMap(text -> LedgerText.fact(text).stream())
                .anyMatch(known -> known.equals(fact) || sameWords(known, fact));
    }

    private static boolean sameWords(Fact one, Fact other) {
        return JsonText.canonical(one.body()).equals(JsonText.canonical(other.body()))
                && one.corrects().equals(other.corrects());
    }

    /**
     * Adds revisions and facts, all or none, and remembers them as one change. A fact that is known already is passed
     * over.
     *
     * @throws ChangedMeanwhileException when a revision does not follow the latest state of its thing
     * @throws StoreException when the database cannot be written
     */
    public void append(Batch batch) {
        append(batch, Change.Kind.DONE, Optional.empty());
    }

    /**
     * The same for what takes a change back or brings it again.
     *
     * @param undoes key of that change
     */
    public void append(Batch batch, Change.Kind kind, Optional<Long> undoes) {
        if (!batch.isEmpty()) {
            database.write(sql -> append(sql, batch, kind, undoes, Progress.UNWATCHED));
        }
    }

    /**
     * The same for much at once.
     *
     * @param progress in revisions and facts
     * @throws thalweg.progress.StoppedException when it was stopped; nothing was added then
     */
    public void append(Batch batch, Progress progress) {
        if (!batch.isEmpty()) {
            database.write(sql -> append(sql, batch, Change.Kind.DONE, Optional.empty(), progress));
        }
    }

    /**
     * The same for a sheet that was given out, whose number was chosen before.
     *
     * @throws ChangedMeanwhileException when that number stands on another sheet by now
     */
    public void appendSheet(Batch batch, long number) {
        database.write(sql -> {
            if (LocalStore.lastSheetNumber(sql) >= number) {
                throw new ChangedMeanwhileException(
                        Sentence.of("The number {0} was given to another sheet meanwhile.", number));
            }
            return append(sql, batch, Change.Kind.DONE, Optional.empty(), Progress.UNWATCHED);
        });
    }

    private static Batch append(Sql sql, Batch batch, Change.Kind kind, Optional<Long> undoes, Progress progress)
            throws SQLException {
        Derived derived = new Derived(sql);
        long all = (long) batch.revisions().size() + batch.facts().size();
        long done = 0;
        List<Long> revisions = new ArrayList<>();
        List<Long> facts = new ArrayList<>();
        for (Revision revision : batch.revisions()) {
            progress.at(done++, all);
            refuseStale(sql, revision);
            revisions.add(insert(sql, revision));
            derived.show(revision);
        }
        for (Fact fact : batch.facts()) {
            progress.at(done++, all);
            OptionalLong key = insert(sql, fact);
            if (key.isPresent()) {
                facts.add(key.getAsLong());
                derived.show(fact);
            }
        }
        progress.at(all, all);
        Set<Long> canyons = derived.finish();
        if (!revisions.isEmpty() || !facts.isEmpty()) {
            ChangeStore.keep(
                    sql, new ChangeStore.Written(kind, undoes, batch.author(), batch.at(), canyons, revisions, facts));
        }
        return batch;
    }

    /** Forgets what was changed so far, for a database that is handed over as new: nothing before can be taken back. */
    public void forgetChanges() {
        database.write(sql -> {
            sql.run("delete from change_entry");
            return sql.run("delete from change");
        });
    }

    /** The revision of that name, if it is known. */
    public Optional<Revision> revision(Hash name) {
        return database.read(sql ->
                        sql.one("select canonical from revision where hash = ?", row -> row.getString(1), (Object)
                                name.bytes()))
                .flatMap(LedgerText::revision);
    }

    /** Every state of a thing, the latest first. */
    public List<Revision> revisions(Uid thing) {
        return database
                .read(sql -> sql.all(
                        "select canonical from revision where thing = ? order by gen desc, hash",
                        row -> row.getString(1),
                        (Object) thing.bytes()))
                .stream()
                .flatMap(text -> LedgerText.revision(text).stream())
                .toList();
    }

    /** The fact of that name, if it is known. */
    public Optional<Fact> fact(Uid name) {
        return database.read(sql -> sql.one(
                        "select canonical from fact where uid = ?", row -> row.getString(1), (Object) name.bytes()))
                .flatMap(LedgerText::fact);
    }

    private static void refuseStale(Sql sql, Revision revision) throws SQLException {
        List<Hash> latest =
                head(sql, revision.thing()).map(Revision::hash).stream().toList();
        if (!latest.equals(revision.parents())) {
            throw new ChangedMeanwhileException(Sentence.of(
                    "This {0} was changed from elsewhere in the meantime; nothing was saved. Open it again"
                            + " and repeat the change.",
                    revision.type()));
        }
    }

    private static long insert(Sql sql, Revision revision) throws SQLException {
        if (LedgerText.revision(revision.canonical()).isEmpty()) {
            throw new IllegalArgumentException("this revision could not be read back");
        }
        long key = sql.insert(
                INSERT_REVISION,
                revision.hash().bytes(),
                revision.thing().bytes(),
                revision.type(),
                revision.gen(),
                revision.canonical());
        for (Hash parent : revision.parents()) {
            sql.run(INSERT_PARENT, key, parent.bytes());
        }
        return key;
    }

    private static OptionalLong insert(Sql sql, Fact fact) throws SQLException {
        if (LedgerText.fact(fact.canonical()).isEmpty()) {
            throw new IllegalArgumentException("this fact could not be read back");
        }
        int added = sql.run(
                INSERT_FACT, fact.uid().bytes(), fact.type(), fact.about().bytes(), fact.canonical());
        return added == 0
                ? OptionalLong.empty()
                : OptionalLong.of(sql.one("select last_insert_rowid()", row -> row.getLong(1))
                        .orElseThrow());
    }

    /** Whether an entry that is known still counts: neither corrected nor withdrawn. */
    public boolean counts(Fact fact) {
        return FactType.of(fact.type())
                .flatMap(type -> database.read(sql -> sql.one(
                        "select counts from " + type.word() + " where uid = ?", row -> row.getInt(1) == 1, (Object)
                                fact.uid().bytes())))
                .orElse(false);
    }

    /** Empties the derived tables and fills them again from the ledger, in one transaction. */
    public void rebuild() {
        database.write(sql -> {
            rebuild(sql);
            return sql;
        });
    }

    /** The same where the caller holds the transaction. */
    static void rebuild(Sql sql) throws SQLException {
        SearchIndex.empty(sql);
        for (String table : Derived.TABLES) {
            sql.run("delete from " + table);
        }
        replay(sql, sql);
    }

    /** Fills the empty derived tables of one connection from the ledger of another, in the order of writing. */
    static void replay(Sql ledger, Sql target) throws SQLException {
        Derived derived = new Derived(target);
        ledger.each("select canonical from revision order by key", row -> {
            String text = row.getString(1);
            derived.show(LedgerText.revision(text).orElseThrow(() -> unreadable(text)));
        });
        ledger.each("select canonical from fact order by key", row -> {
            String text = row.getString(1);
            derived.show(LedgerText.fact(text).orElseThrow(() -> unreadable(text)));
        });
        derived.finish();
    }

    private static IllegalArgumentException unreadable(String text) {
        return new IllegalArgumentException(
                "an entry of the ledger cannot be read: " + text.substring(0, Math.min(80, text.length())));
    }
}
