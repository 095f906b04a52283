package thalweg.storage;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.sql.SQLException;
import java.util.Arrays;
import java.util.List;

/**
 * The numbered steps from an empty file to today's tables. A step that has been released never changes.
 *
 * @param steps names of resources beside this class's package, in order; the first leads to version 1
 */
record Migrations(List<String> steps) {

    /** Those of this program. */
    static final Migrations OURS = new Migrations(List.of(
            "001-records.sql",
            "002-changes.sql",
            "003-search.sql",
            "004-gone.sql",
            "005-stations.sql",
            "006-oldest-look.sql"));

    Migrations {
        steps = List.copyOf(steps);
    }

    /** The version that this program reads and writes. */
    int latest() {
        return steps.size();
    }

    /** The version of the tables in a database, 0 where there are none. */
    static int version(Sql sql) throws SQLException {
        return sql.one("pragma user_version", row -> row.getInt(1)).orElse(0);
    }

    /**
     * Runs every step that the database lacks by now; the caller holds the transaction.
     *
     * <p>A step changes tables and no more. What is derived from the ledger is derived anew after the last of them, as SQL
     * can neither fold words nor read bodies by the rules of this program.
     */
    void run(Sql sql) throws SQLException {
        int before = version(sql);
        for (int version = before; version < latest(); version++) {
            for (String statement : statements(steps.get(version))) {
                sql.run(statement);
            }
        }
        sql.run("pragma user_version = " + latest());
        if (before > 0 && before < latest()) {
            LedgerStore.rebuild(sql);
        }
    }

    /** SQLite runs only the first statement of a text that holds several, so they are cut apart at line ends. */
    private static List<String> statements(String step) {
        try (InputStream in = Migrations.class.getResourceAsStream("/thalweg/storage/" + step)) {
            if (in == null) {
                throw new AssertionError("the step " + step + " is part of the program");
            }
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            return Arrays.stream(text.split(";\\s*\\R"))
                    .map(String::strip)
                    .filter(statement -> !statement.isEmpty())
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException("a part of the program cannot be read", e);
        }
    }
}
