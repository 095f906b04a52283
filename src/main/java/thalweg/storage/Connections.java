package thalweg.storage;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.Optional;
import org.sqlite.BusyHandler;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteOpenMode;

/** Opens connections to SQLite, each with every setting that the program relies on. */
final class Connections {

    /** Room for pages in memory [KiB]: lists go back and forth over more than the usual 2 MiB. */
    static final int READING_KIB = 16_384;

    /** The same while something is written: a large import would write to the file and wait for the disk in between. */
    static final int WRITING_KIB = 65_536;

    private Connections() {}

    /** To a database in memory. */
    static Connection toMemory() throws SQLException {
        return open("jdbc:sqlite::memory:", false, new Patience(0));
    }

    /**
     * To a file that is there.
     *
     * <p>The file is named by its URI: the driver takes a question mark in a plain path for the start of its options.
     *
     * @param patience with another program that writes
     */
    static Connection to(Path file, boolean readOnly, Patience patience) throws SQLException {
        return open("jdbc:sqlite:" + file.toAbsolutePath().toUri(), readOnly, patience);
    }

    private static Connection open(String url, boolean readOnly, Patience patience) throws SQLException {
        SQLiteConfig config = new SQLiteConfig();
        config.setReadOnly(readOnly);
        if (!readOnly) {
            config.resetOpenMode(SQLiteOpenMode.CREATE);
            config.setOpenMode(SQLiteOpenMode.READWRITE);
        }
        config.enforceForeignKeys(true);
        // Asking for the key after every change costs as much as a small change; insert asks by itself.
        config.setGetGeneratedKeys(false);
        Connection connection = config.createConnection(url);
        try {
            BusyHandler.setHandler(connection, patience);
            settle(new Sql(connection), readOnly);
            return connection;
        } catch (SQLException | RuntimeException e) {
            connection.close();
            throw e;
        }
    }

    private static void settle(Sql sql, boolean readOnly) throws SQLException {
        sql.run("pragma trusted_schema = off");
        sql.run("pragma cell_size_check = on");
        sql.run("pragma temp_store = memory");
        room(sql, READING_KIB);
        sql.run("pragma synchronous = extra");
        Optional<Long> mapped = sql.one("pragma mmap_size = 0", row -> row.getLong(1));
        if (mapped.filter(bytes -> bytes != 0).isPresent()) {
            throw new SQLException("memory mapping cannot be turned off");
        }
        if (!readOnly) {
            sql.all("pragma journal_mode = delete", row -> row.getString(1));
        }
    }

    /** Gives pages so much room in memory [KiB]; those beyond it are let go. */
    static void room(Sql sql, int kibibytes) throws SQLException {
        sql.run("pragma cache_size = " + -kibibytes);
    }
}
