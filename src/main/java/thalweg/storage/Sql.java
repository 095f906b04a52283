package thalweg.storage;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import thalweg.logbook.RowOrder;

/** The little that JDBC lacks: run a statement with its values, read rows. */
final class Sql {

    private final Statements statements;

    Sql(Connection connection) {
        this.statements = new Statements(connection);
    }

    /** Reads one row. */
    @FunctionalInterface
    interface RowReader<T> {
        T read(ResultSet row) throws SQLException;
    }

    /** Uses one row. */
    @FunctionalInterface
    interface RowUser {
        void use(ResultSet row) throws SQLException;
    }

    /** Those keys as one value, of which a statement asks {@code json_each}. */
    static String array(RowOrder keys) {
        return Arrays.stream(keys.toArray()).mapToObj(Long::toString).collect(Collectors.joining(",", "[", "]"));
    }

    /** How many rows it changed. */
    int run(String sql, @Nullable Object... values) throws SQLException {
        return with(sql, PreparedStatement::executeUpdate, values);
    }

    /** The integer key of the row that it inserted. */
    long insert(String sql, @Nullable Object... values) throws SQLException {
        run(sql, values);
        return one("select last_insert_rowid()", row -> row.getLong(1)).orElseThrow();
    }

    <T> List<T> all(String sql, RowReader<T> reader, @Nullable Object... values) throws SQLException {
        List<T> rows = new ArrayList<>();
        each(sql, row -> rows.add(reader.read(row)), values);
        return rows;
    }

    /** Uses the rows one after the other, so that they need not be in memory together. */
    void each(String sql, RowUser user, @Nullable Object... values) throws SQLException {
        with(
                sql,
                statement -> {
                    try (ResultSet result = statement.executeQuery()) {
                        int rows = 0;
                        for (; result.next(); rows++) {
                            user.use(result);
                        }
                        return rows;
                    }
                },
                values);
    }

    <T> Optional<T> one(String sql, RowReader<T> reader, @Nullable Object... values) throws SQLException {
        return with(
                sql,
                statement -> {
                    try (ResultSet result = statement.executeQuery()) {
                        return result.next() ? Optional.of(reader.read(result)) : Optional.empty();
                    }
                },
                values);
    }

    /** Work with a prepared statement. */
    @FunctionalInterface
    private interface Use<T> {
        T of(PreparedStatement statement) throws SQLException;
    }

    /** A statement that failed is not used again. */
    private <T> T with(String sql, Use<T> use, @Nullable Object... values) throws SQLException {
        PreparedStatement statement = statements.take(sql, values);
        T result;
        try {
            result = use.of(statement);
        } catch (SQLException | RuntimeException | Error e) {
            statement.close();
            throw e;
        }
        statements.giveBack(sql, statement);
        return result;
    }
}
