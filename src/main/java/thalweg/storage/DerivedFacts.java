package thalweg.storage;

import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import thalweg.body.AnalysisBody;
import thalweg.body.FactType;
import thalweg.body.InspectionBody;
import thalweg.body.NoteBody;
import thalweg.body.RoundBody;
import thalweg.body.SheetGivenBody;
import thalweg.body.WithdrawalBody;
import thalweg.json.FieldReader;
import thalweg.json.Findings;
import thalweg.json.JsonText;
import thalweg.ledger.Fact;
import thalweg.ledger.Uid;
import thalweg.logbook.Amendments;
import thalweg.logbook.Entry;
import thalweg.route.PartialDate;

/** Derives the rows of facts, and which of them still count. */
final class DerivedFacts {

    private final Sql sql;

    DerivedFacts(Sql sql) {
        this.sql = sql;
    }

    /**
     * What a fact came to be about.
     *
     * @param type of the fact that is shown or withdrawn
     * @param ownerKey of the row of the thing
     */
    record About(FactType type, long ownerKey) {}

    /** Shows the fact, and tells what it is about in the end; empty where this version does not know such facts. */
    Optional<About> show(Fact fact) throws SQLException {
        if (fact.type().equals(WithdrawalBody.TYPE)) {
            return Optional.of(withdrawal(fact));
        }
        Optional<FactType> type = FactType.of(fact.type());
        if (type.isEmpty()) {
            return Optional.empty();
        }
        About about = new About(type.get(), owner(type.get(), fact.about()));
        Uid corrects = fact.corrects().orElse(null);
        PartialDate on = on(type.get(), fact);
        sql.run(
                INSERT.formatted(type.get().word(), type.get().owner().word()),
                fact.uid().bytes(),
                about.ownerKey(),
                on.print(),
                on.latest().toString(),
                fact.author(),
                fact.at(),
                JsonText.canonical(fact.body()),
                corrects == null ? null : corrects.bytes());
        if (isAmended(about)) {
            settle(about);
        }
        return Optional.of(about);
    }

    private long owner(FactType type, Uid about) throws SQLException {
        String table = type.owner().word();
        return sql.one("select key from " + table + " where uid = ?", row -> row.getLong(1), (Object) about.bytes())
                .orElseThrow(() -> new IllegalArgumentException("the " + table + " of a fact is missing"));
    }

    private static PartialDate on(FactType type, Fact fact) {
        FieldReader in = FieldReader.of(fact.body(), new Findings());
        Uid about = fact.about();
        return switch (type) {
            case ROUND -> read(RoundBody.read(about, in), fact).on();
            case INSPECTION -> read(InspectionBody.read(about, in), fact).on();
            case RIGGING_NOTE -> read(NoteBody.read(about, in), fact).on();
            case RIG_ANALYSIS -> read(AnalysisBody.read(about, in), fact).on();
            case SHEET_GIVEN -> read(SheetGivenBody.read(about, in), fact).on();
        };
    }

    private static <T> T read(Optional<T> record, Fact fact) {
        return record.orElseThrow(
                () -> new IllegalArgumentException("the body of " + fact.uid().text() + " breaks a rule"));
    }

    private About withdrawal(Fact fact) throws SQLException {
        read(WithdrawalBody.read(FieldReader.of(fact.body(), new Findings())), fact);
        sql.run(
                WITHDRAW,
                fact.uid().bytes(),
                fact.about().bytes(),
                fact.author(),
                fact.at(),
                JsonText.canonical(fact.body()));
        Uid root = fact.about();
        for (Optional<Uid> above = withdrawn(root); above.isPresent(); above = withdrawn(root)) {
            root = above.get();
        }
        for (FactType type : FactType.values()) {
            Optional<Long> owner = sql.one(
                    "select " + type.owner().word() + " from " + type.word() + " where uid = ?",
                    row -> row.getLong(1),
                    (Object) root.bytes());
            if (owner.isPresent()) {
                sql.run("update " + type.word() + " set amended = 1 where uid = ?", (Object) root.bytes());
                About about = new About(type, owner.get());
                settle(about);
                return about;
            }
        }
        throw new IllegalArgumentException("what a withdrawal takes back is missing");
    }

    private Optional<Uid> withdrawn(Uid withdrawal) throws SQLException {
        return sql.one("select withdrawn from withdrawal where uid = ?", row -> Uid.ofBytes(row.getBytes(1)), (Object)
                withdrawal.bytes());
    }

    private boolean isAmended(About about) throws SQLException {
        return sql.one(
                        AMENDED.formatted(
                                about.type().word(), about.type().owner().word()),
                        row -> row.getInt(1),
                        about.ownerKey())
                .isPresent();
    }

    /** Works out anew which entries about one thing count. */
    private void settle(About about) throws SQLException {
        List<Entry<String>> entries = new EntryRows(sql).of(about.type(), about.ownerKey(), in -> Optional.of(""));
        for (Entry<String> entry : Amendments.settle(entries)) {
            sql.run(
                    "update " + about.type().word() + " set counts = ? where uid = ?",
                    entry.counts() ? 1 : 0,
                    entry.uid().bytes());
        }
    }

    private static final String INSERT = """
            insert into %1$s (uid, %2$s, day, last_day, author, at, body, corrects)
            values (?, ?, ?, ?, ?, ?, ?, ?)
            """;

    private static final String WITHDRAW = """
            insert into withdrawal (uid, withdrawn, author, at, body)
            values (?, ?, ?, ?, ?)
            """;

    private static final String AMENDED = """
            select 1
              from %s
             where %s = ?
               and (corrects is not null or amended = 1)
             limit 1
            """;
}
