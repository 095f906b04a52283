package thalweg.storage;

import java.util.List;
import java.util.Optional;
import thalweg.ledger.Fact;
import thalweg.ledger.Revision;
import thalweg.ledger.Uid;

/**
 * What was written to the ledger together.
 *
 * @param key of it in this database, growing with time
 * @param kind whether it was a change of its own or took one back
 * @param undoes the change that it takes back or brings again; empty for a change of its own
 * @param author who made it
 * @param at when, as RFC 3339 in UTC
 * @param canyon the only canyon it touched; empty where it touched several or none
 * @param size how many revisions and facts it has
 * @param revisions in the order of writing; in a list perhaps not all of them
 * @param facts in the order of writing; in a list perhaps not all of them
 * @param taken whether it is taken back now
 */
public record Change(
        long key,
        Kind kind,
        Optional<Long> undoes,
        String author,
        String at,
        Optional<Uid> canyon,
        int size,
        List<Revision> revisions,
        List<Fact> facts,
        boolean taken) {

    /** What a change is to another. */
    public enum Kind {
        DONE,
        UNDONE,
        REDONE
    }

    public Change {
        revisions = List.copyOf(revisions);
        facts = List.copyOf(facts);
    }
}
