package thalweg.logbook;

import java.util.List;
import java.util.Optional;
import thalweg.ledger.Uid;

/**
 * A fact as it stands in the logbook: what it says, its name, who wrote it down when, and what became of it.
 *
 * @param <T> what it says
 * @param uid its name in every database
 * @param content what it says
 * @param author who wrote it down
 * @param at when it was written down, as RFC 3339 in UTC
 * @param correction whose place it takes; empty for an entry of its own
 * @param withdrawals of it, in the order of their names
 * @param corrected whether another entry that stands takes its place
 */
public record Entry<T>(
        Uid uid,
        T content,
        String author,
        String at,
        Optional<Correction> correction,
        List<Withdrawal> withdrawals,
        boolean corrected) {

    public Entry {
        withdrawals = List.copyOf(withdrawals);
    }

    /** An entry of its own that nobody corrected or withdrew. */
    public Entry(Uid uid, T content, String author, String at) {
        this(uid, content, author, at, Optional.empty(), List.of(), false);
    }

    /** Whether it still counts: neither corrected nor withdrawn. */
    public boolean counts() {
        return !corrected && withdrawal().isEmpty();
    }

    /** The withdrawal that is in force, if any. */
    public Optional<Withdrawal> withdrawal() {
        return withdrawals.stream().filter(Withdrawal::stands).findFirst();
    }

    Entry<T> corrected(boolean isCorrected) {
        return new Entry<>(uid, content, author, at, correction, withdrawals, isCorrected);
    }
}
