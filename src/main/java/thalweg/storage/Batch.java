package thalweg.storage;

import java.util.List;
import thalweg.ledger.Fact;
import thalweg.ledger.Revision;

/**
 * What is added to the ledger in one transaction.
 *
 * @param revisions parents before children
 * @param facts about things that are there or among the revisions
 */
public record Batch(List<Revision> revisions, List<Fact> facts) {

    public Batch {
        revisions = List.copyOf(revisions);
        facts = List.copyOf(facts);
    }

    /** Whether there is nothing to add. */
    public boolean isEmpty() {
        return revisions.isEmpty() && facts.isEmpty();
    }
}
