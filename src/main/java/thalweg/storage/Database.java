package thalweg.storage;

import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import org.sqlite.SQLiteConnection;
import org.sqlite.SQLiteErrorCode;
import thalweg.fault.Sentence;
import thalweg.fault.StoreException;
import thalweg.progress.Progress;
import thalweg.progress.StoppedException;

/**
 * An open database. One connection, used by one thread at a time; every change is one transaction that happens whole or
 * not at all.
 */
public final class Database implements AutoCloseable {

    /** "Thlw" in ASCII: tells our files from other SQLite files. */
    static final int APPLICATION_ID = 0x54686C77;

    /** Room for pages in memory while a copy is written [KiB]. */
    private static final int COPYING_KIB = 1_024;

    /** As everybody has it. */
    private static final Setup USUAL = new Setup(Migrations.OURS, 5_000);

    private final Path file;
    private final boolean readOnly;
    private final Connection connection;
    private final Sql sql;
    private final Patience patience;
    private boolean inside;

    private Database(Path file, boolean readOnly, Connection connection, Patience patience) {
        this.patience = patience;
        this.file = file;
        this.readOnly = readOnly;
        this.connection = connection;
        this.sql = new Sql(connection);
    }

    /**
     * What tests open a database with otherwise.
     *
     * @param migrations that bring its tables up to date
     * @param busyMillis how long to wait for another program that writes [ms]
     * @param copies whether an older database is copied beside itself before it is brought up to date
     */
    record Setup(Migrations migrations, int busyMillis, boolean copies) {
        Setup(Migrations migrations, int busyMillis) {
            this(migrations, busyMillis, true);
        }
    }

    /** Work inside a transaction or a read. */
    @FunctionalInterface
    interface Work<T> {
        T on(Sql sql) throws SQLException;
    }

    /**
     * Opens the file, makes it where that is asked for, and brings its tables up to date after a backup beside it.
     *
     * @throws StoreException when it is missing, foreign, newer, damaged or cannot be opened
     */
    public static Database open(Path file, Access access) {
        return open(file, access, USUAL);
    }

    /**
     * Opens a copy that nobody else knows, and brings its tables up to date without another copy.
     *
     * @throws StoreException when it is foreign, newer, damaged or cannot be opened
     */
    static Database openCopy(Path file) {
        return open(file, Access.WRITE, new Setup(USUAL.migrations(), USUAL.busyMillis(), false));
    }

    static Database open(Path file, Access access, Setup setup) {
        if (!Files.exists(file)) {
            if (!Files.notExists(file)) {
                throw new StoreException(Sentence.of(
                        "Whether there is a database at {0} cannot be seen; check that every folder on the way to"
                                + " it is one and may be entered.",
                        file));
            }
            if (access != Access.CREATE) {
                throw new StoreException(Sentence.of(
                        "There is no database at {0}; check the path, or make one by opening it on the screen or"
                                + " importing into it.",
                        file));
            }
            DatabaseFile.create(file);
        } else if (!Files.isRegularFile(file)) {
            throw new StoreException(Sentence.of("{0} is not a file; choose a database file with --db.", file));
        }
        boolean readOnly = access == Access.READ || !Files.isWritable(file);
        if (!DatabaseFile.isEmpty(file)) {
            refuseForeign(file, FileHeader.of(file), setup.migrations());
        } else if (readOnly) {
            throw new StoreException(Sentence.of("{0} is empty; it is not a Thalweg database.", file));
        }
        Patience patience = new Patience(setup.busyMillis());
        Database database = new Database(file, readOnly, connect(file, readOnly, patience), patience);
        try {
            database.prepare(setup);
            return database;
        } catch (RuntimeException e) {
            database.close();
            throw e;
        }
    }

    /** A database in memory, for rebuilding beside another and for tests. */
    public static Database inMemory() {
        Path nowhere = Path.of(":memory:");
        try {
            Database database = new Database(nowhere, false, Connections.toMemory(), new Patience(0));
            database.prepare(USUAL);
            return database;
        } catch (SQLException e) {
            throw SqlFailures.explain(nowhere, e);
        }
    }

    private static void refuseForeign(Path file, FileHeader header, Migrations migrations) {
        if (header.applicationId() != APPLICATION_ID) {
            throw new StoreException(
                    Sentence.of("{0} belongs to another program; choose another file with --db.", file));
        }
        if (header.version() > migrations.latest()) {
            throw new StoreException(Sentence.of(
                    "The database {0} was written by a newer Thalweg (tables of version {1}, this program"
                            + " knows {2}); update Thalweg to open it.",
                    file, header.version(), migrations.latest()));
        }
    }

    private static Connection connect(Path file, boolean readOnly, Patience patience) {
        try {
            return Connections.to(file, readOnly, patience);
        } catch (SQLException e) {
            throw SqlFailures.explain(file, e);
        }
    }

    private void prepare(Setup setup) {
        Migrations migrations = setup.migrations();
        int version = read(Migrations::version);
        if (version == migrations.latest()) {
            return;
        }
        if (readOnly) {
            throw new StoreException(Sentence.of(
                    "The database {0} was written by an older Thalweg and must be brought up to date once;"
                            + " open it on the screen, and make the file writable first if it is not.",
                    file));
        }
        if (version > 0 && setup.copies()) {
            backUp(file.resolveSibling(file.getFileName() + ".before-version-" + migrations.latest()));
        }
        try {
            write(within -> {
                within.run("pragma application_id = " + APPLICATION_ID);
                migrations.run(within);
                return file;
            });
        } catch (IllegalArgumentException e) {
            throw new StoreException(
                    Sentence.of(
                            "The database {0} cannot be brought up to date, because its ledger breaks a rule of this"
                                    + " program: {1}. Nothing was changed; put a backup copy in its place.",
                            file, String.valueOf(e.getMessage())),
                    e);
        }
    }

    /**
     * Writes a copy of the database to a file that is not there yet.
     *
     * @throws StoreException when the copy cannot be written
     */
    public synchronized void backUp(Path target) {
        backUp(target, Progress.UNWATCHED);
    }

    /**
     * The same.
     *
     * @param progress in bytes, about
     * @throws thalweg.progress.StoppedException when it was stopped; there is no copy then
     */
    public synchronized void backUp(Path target, Progress progress) {
        if (Files.exists(target)) {
            throw new StoreException(
                    Sentence.of("{0} is there already; move it away before the database is copied there.", target));
        }
        DatabaseFile.create(target);
        try (Watched watched = Watched.copying(connection, target, bytes(), progress)) {
            try {
                // With much room in memory nothing of the copy would be in its file before the end.
                Connections.room(sql, COPYING_KIB);
                sql.run("vacuum into ?", target.toAbsolutePath().toString());
            } catch (SQLException e) {
                watched.stopped().ifPresent(stopped -> {
                    throw stopped;
                });
                throw e;
            } finally {
                Connections.room(sql, Connections.READING_KIB);
            }
            DatabaseFile.settle(target);
        } catch (SQLException e) {
            DatabaseFile.discard(target, e);
            throw SqlFailures.explain(target, e);
        } catch (StoreException | StoppedException e) {
            DatabaseFile.discard(target, e);
            throw e;
        }
    }

    /** How large the database is [bytes]. */
    private long bytes() throws SQLException {
        return sql.one("pragma page_count", row -> row.getLong(1)).orElse(0L)
                * sql.one("pragma page_size", row -> row.getLong(1)).orElse(0L);
    }

    /**
     * Replaces everything in the database by what another holds, whole or not at all. Other programs that have it open
     * see the new content with their next look.
     *
     * @param copy a database of this version
     * @throws StoreException when it cannot be written or another program holds it
     */
    synchronized void replaceBy(Path copy) {
        try {
            int code = connection
                    .unwrap(SQLiteConnection.class)
                    .getDatabase()
                    .restore("main", copy.toAbsolutePath().toString(), (remaining, pages) -> {}, 100, 50, -1);
            if (code != SQLiteErrorCode.SQLITE_OK.code && code != SQLiteErrorCode.SQLITE_DONE.code) {
                throw new SQLException("the copy could not be taken in", "", code);
            }
        } catch (SQLException e) {
            throw SqlFailures.explain(file, e);
        }
    }

    /** Has it told, from the thread that works, when work waits for another program that writes. */
    public void onWaiting(Runnable waiting) {
        patience.tell(waiting);
    }

    /**
     * A number that is another one once somebody else has changed the database: another program, or another connection of
     * this one. Compare it only with what the same opening said before.
     */
    public synchronized long changedElsewhere() {
        try {
            return sql.one("pragma data_version", row -> row.getLong(1)).orElse(0L);
        } catch (SQLException e) {
            throw SqlFailures.explain(file, e);
        }
    }

    /** Whether nothing can be changed in it. */
    public boolean isReadOnly() {
        return readOnly;
    }

    /** Where it is. */
    public Path file() {
        return file;
    }

    /**
     * Reads without changing anything; what is read belongs together. Inside other work it reads what that has left so
     * far.
     */
    synchronized <T> T read(Work<T> work) {
        try {
            return inside ? work.on(sql) : transaction("begin deferred", work, "rollback");
        } catch (SQLException e) {
            throw SqlFailures.explain(file, e);
        }
    }

    /** Changes in one transaction: all of it is on the disk when this returns, or none. It cannot begin inside other work. */
    synchronized <T> T write(Work<T> work) {
        if (inside) {
            throw new IllegalStateException("a change cannot begin inside other work on the database");
        }
        if (readOnly) {
            throw new StoreException(Sentence.of(
                    "The database {0} is open for reading only; nothing was changed. Make the file writable"
                            + " and open it again.",
                    file));
        }
        try {
            Connections.room(sql, Connections.WRITING_KIB);
            try {
                return transaction("begin immediate", work, "commit");
            } finally {
                Connections.room(sql, Connections.READING_KIB);
            }
        } catch (SQLException e) {
            throw SqlFailures.explain(file, e);
        }
    }

    private <T> T transaction(String begin, Work<T> work, String end) throws SQLException {
        sql.run(begin);
        inside = true;
        try {
            T result = work.on(sql);
            sql.run(end);
            return result;
        } catch (SQLException | RuntimeException | Error e) {
            rollBack(e);
            throw e;
        } finally {
            inside = false;
        }
    }

    /** After some failures SQLite has rolled back by itself; what failed first is what counts then. */
    private void rollBack(Throwable cause) {
        try {
            sql.run("rollback");
        } catch (SQLException e) {
            cause.addSuppressed(e);
        }
    }

    @Override
    public synchronized void close() {
        try {
            connection.close();
        } catch (SQLException e) {
            throw SqlFailures.explain(file, e);
        }
    }
}
