package thalweg.storage;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.sql.ResultSet;
import java.sql.SQLException;

/**
 * Stands for the rows of a query: equal for the same rows in any order, and as good as never for others. Millions of rows
 * are compared without holding them.
 *
 * @param rows how many
 * @param first sum of the first 8 bytes of each row's SHA-256, overflowing
 * @param second sum of the next 8
 */
record RowSum(long rows, long first, long second) {

    private static final char NEXT_COLUMN = '\u001F';

    /** Adds the rows of a query up. */
    static RowSum of(Sql sql, String query) throws SQLException {
        long[] sums = new long[3];
        MessageDigest digest = sha256();
        sql.each(query, row -> {
            byte[] hash = digest.digest(text(row).getBytes(StandardCharsets.UTF_8));
            sums[0]++;
            sums[1] += number(hash, 0);
            sums[2] += number(hash, Long.BYTES);
        });
        return new RowSum(sums[0], sums[1], sums[2]);
    }

    private static String text(ResultSet row) throws SQLException {
        StringBuilder text = new StringBuilder();
        for (int column = 1; column <= row.getMetaData().getColumnCount(); column++) {
            text.append(row.getString(column)).append(NEXT_COLUMN);
        }
        return text.toString();
    }

    private static long number(byte[] bytes, int from) {
        return ByteBuffer.wrap(bytes).getLong(from);
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new AssertionError("every JDK has SHA-256", e);
        }
    }
}
