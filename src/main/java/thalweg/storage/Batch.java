package thalweg.storage;

import java.util.List;
import thalweg.ledger.Fact;
import thalweg.ledger.Revision;

/**
 * What is added to the ledger in one transaction.
 *
 * @param revisions parents before children
 * @param facts about things that are there or among the revisions
 * @param author who adds it here; what is added may have been written by others
 * @param at when, as RFC 3339 in UTC
 */
public record Batch(List<Revision> revisions, List<Fact> facts, String author, String at) {

    public Batch {
        revisions = List.copyOf(revisions);
        facts = List.copyOf(facts);
    }

    /** Whether there is nothing to add. */
    public boolean isEmpty() {
        return revisions.isEmpty() && facts.isEmpty();
    }
}
