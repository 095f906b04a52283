package thalweg.storage;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Keeps prepared statements for the next time: preparing one takes longer than most of them run. */
final class Statements {

    /** More than the program has; those with a text of their own push one another out. */
    private static final int MOST = 150;

    /** A pragma may act while it is prepared, so that a kept one would do nothing. */
    private static final Pattern KEPT = Pattern.compile("\\s*(select|insert|update|delete|with)\\s.*", Pattern.DOTALL);

    private final Connection connection;
    private final Map<String, PreparedStatement> idle = new LinkedHashMap<>();

    Statements(Connection connection) {
        this.connection = connection;
    }

    /** A statement with its values that nobody else uses; give it back or close it. */
    PreparedStatement take(String sql, @Nullable Object... values) throws SQLException {
        PreparedStatement kept = idle.remove(sql);
        PreparedStatement statement = kept == null ? connection.prepareStatement(sql) : kept;
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

    /** Keeps a statement that did its work, with no result of it open any more. */
    void giveBack(String sql, PreparedStatement statement) throws SQLException {
        if (idle.containsKey(sql) || !KEPT.matcher(sql).matches()) {
            statement.close();
            return;
        }
        statement.clearParameters();
        if (idle.size() >= MOST) {
            Iterator<PreparedStatement> oldest = idle.values().iterator();
            oldest.next().close();
            oldest.remove();
        }
        idle.put(sql, statement);
    }
}
