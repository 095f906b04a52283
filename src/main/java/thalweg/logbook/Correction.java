package thalweg.logbook;

import thalweg.ledger.Uid;

/**
 * Whose place an entry takes, and why.
 *
 * @param of the entry that was wrong
 * @param reason why it was; not blank
 */
public record Correction(Uid of, String reason) {

    public Correction {
        if (reason.isBlank()) {
            throw new IllegalArgumentException("a correction has a reason");
        }
    }
}
