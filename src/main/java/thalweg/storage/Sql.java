package thalweg.storage;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The little that JDBC lacks: run a statement with its values, read rows. */
final class Sql {

    private final Connection connection;

    Sql(Connection connection) {
        this.connection = connection;
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

    /** How many rows it changed. */
    int run(String sql, @Nullable Object... values) throws SQLException {
        try (PreparedStatement statement = prepared(sql, values)) {
            return statement.executeUpdate();
        }
    }

    /** The integer key of the row that it inserted. */
    long insert(String sql, @Nullable Object... values) throws SQLException {
        run(sql, values);
        return one("select last_insert_rowid()", row -> row.getLong(1)).orElseThrow();
    }

    <T> List<T> all(String sql, RowReader<T> reader, @Nullable Object... values) throws SQLException {
        List<T> rows = new ArrayList<>();
        try (PreparedStatement statement = prepared(sql, values);
                ResultSet result = statement.executeQuery()) {
            while (result.next()) {
                rows.add(reader.read(result));
            }
        }
        return rows;
    }

    /** Uses the rows one after the other, so that they need not be in memory together. */
    void each(String sql, RowUser user, @Nullable Object... values) throws SQLException {
        try (PreparedStatement statement = prepared(sql, values);
                ResultSet result = statement.executeQuery()) {
            while (result.next()) {
                user.use(result);
            }
        }
    }

    <T> Optional<T> one(String sql, RowReader<T> reader, @Nullable Object... values) throws SQLException {
        try (PreparedStatement statement = prepared(sql, values);
                ResultSet result = statement.executeQuery()) {
            return result.next() ? Optional.of(reader.read(result)) : Optional.empty();
        }
    }

    private PreparedStatement prepared(String sql, @Nullable Object... values) throws SQLException {
        PreparedStatement statement = connection.prepareStatement(sql);
        try {
            for (int i = 0; i < values.length; i++) {
                statement.setObject(i + 1, values[i]);
            }
            return statement;
        } catch (SQLException e) {
            statement.close();
            throw e;
        }
    }
}
