package thalweg.body;

import java.util.List;
import java.util.Optional;
import thalweg.json.FieldReader;
import thalweg.json.Findings;
import thalweg.json.Json;
import thalweg.ledger.Fact;
import thalweg.ledger.Uid;
import thalweg.logbook.Withdrawal;

/** A withdrawal as a body: its reason. What is withdrawn stands in the fact around it. */
public final class WithdrawalBody {

    /** The type of such facts; what they are about is another fact. */
    public static final String TYPE = "withdrawal";

    /** The key of why something was corrected, withdrawn or taken out. */
    public static final String REASON = "reason";

    private WithdrawalBody() {}

    /** The fact that takes back another. */
    public static Fact of(Uid withdrawn, String reason, String author, String at) {
        Json.Fields body = Json.fields().put(REASON, reason).done();
        return new Fact(TYPE, withdrawn, body, Optional.empty(), author, at);
    }

    /** The reason; empty where a rule was broken. */
    public static Optional<String> read(FieldReader in) {
        String reason = in.text(REASON, Limits.REASON);
        return in.sound() ? Optional.of(reason) : Optional.empty();
    }

    /**
     * The withdrawal that such a fact stands for.
     *
     * @param withdrawals of it, in the order of their names
     */
    public static Withdrawal withdrawal(Fact fact, List<Withdrawal> withdrawals) {
        String reason = read(FieldReader.of(fact.body(), new Findings()))
                .orElseThrow(() -> new IllegalArgumentException("a withdrawal has a reason"));
        return new Withdrawal(fact.uid(), reason, fact.author(), fact.at(), withdrawals);
    }
}
