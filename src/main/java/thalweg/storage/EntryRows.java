package thalweg.storage;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import thalweg.body.FactType;
import thalweg.body.WithdrawalBody;
import thalweg.json.FieldReader;
import thalweg.ledger.Uid;
import thalweg.logbook.Correction;
import thalweg.logbook.Entry;
import thalweg.logbook.Withdrawal;

/** Reads what was noted about one thing, with what corrects and withdraws it. */
final class EntryRows {

    private static final String ENTRIES = """
            select uid, author, at, body, amended, corrects
              from %s
             where %s = ?
             order by last_day desc, at desc, uid
            """;

    private static final String WITHDRAWALS = """
            select uid, author, at, body
              from withdrawal
             where withdrawn = ?
             order by uid
            """;

    private final Sql sql;

    EntryRows(Sql sql) {
        this.sql = sql;
    }

    /**
     * The entries of one kind about one thing, newest first; whether a correction stands is left to the records.
     *
     * @param ownerKey of the thing's row
     * @param reader of what an entry says
     */
    <T> List<Entry<T>> of(FactType type, long ownerKey, Function<FieldReader, Optional<T>> reader) throws SQLException {
        List<Row> rows = sql.all(ENTRIES.formatted(type.word(), type.owner().word()), Row::of, ownerKey);
        List<Entry<T>> entries = new ArrayList<>();
        for (Row row : rows) {
            FieldReader in = Bodies.reader(row.uid(), row.body());
            T content = Bodies.sound(row.uid(), reader.apply(in));
            Optional<Correction> correction =
                    row.corrects().map(of -> new Correction(of, in.text(WithdrawalBody.REASON, Integer.MAX_VALUE)));
            List<Withdrawal> withdrawals = row.amended() ? withdrawals(row.uid()) : List.of();
            entries.add(new Entry<>(row.uid(), content, row.author(), row.at(), correction, withdrawals, false));
        }
        return entries;
    }

    private List<Withdrawal> withdrawals(Uid of) throws SQLException {
        List<Withdrawal> withdrawals = new ArrayList<>();
        for (Row row : sql.all(WITHDRAWALS, Row::ofWithdrawal, (Object) of.bytes())) {
            String reason = Bodies.sound(row.uid(), WithdrawalBody.read(Bodies.reader(row.uid(), row.body())));
            withdrawals.add(new Withdrawal(row.uid(), reason, row.author(), row.at(), withdrawals(row.uid())));
        }
        return withdrawals;
    }

    private record Row(Uid uid, String author, String at, String body, boolean amended, Optional<Uid> corrects) {

        static Row of(ResultSet row) throws SQLException {
            byte[] corrects = row.getBytes("corrects");
            return new Row(
                    Uid.ofBytes(row.getBytes("uid")),
                    row.getString("author"),
                    row.getString("at"),
                    row.getString("body"),
                    row.getInt("amended") == 1,
                    corrects == null ? Optional.empty() : Optional.of(Uid.ofBytes(corrects)));
        }

        static Row ofWithdrawal(ResultSet row) throws SQLException {
            return new Row(
                    Uid.ofBytes(row.getBytes("uid")),
                    row.getString("author"),
                    row.getString("at"),
                    row.getString("body"),
                    false,
                    Optional.empty());
        }
    }
}
