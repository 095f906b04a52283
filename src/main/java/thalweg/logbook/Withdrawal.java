package thalweg.logbook;

import java.util.List;
import thalweg.ledger.Uid;

/**
 * The taking back of an entry, or of an earlier withdrawal. It never changes: what is taken back by mistake comes back by
 * withdrawing the withdrawal.
 *
 * @param uid its name in every database
 * @param reason why; not blank
 * @param author who wrote it down
 * @param at when it was written down, as RFC 3339 in UTC
 * @param withdrawals of this withdrawal, in the order of their names
 */
public record Withdrawal(Uid uid, String reason, String author, String at, List<Withdrawal> withdrawals) {

    public Withdrawal {
        withdrawals = List.copyOf(withdrawals);
        if (reason.isBlank()) {
            throw new IllegalArgumentException("a withdrawal has a reason");
        }
    }

    /** Whether it is in force: nothing that is in force takes it back. */
    public boolean stands() {
        return withdrawals.stream().noneMatch(Withdrawal::stands);
    }
}
