package thalweg.exchange;

import java.util.List;
import thalweg.fault.InputException;
import thalweg.fault.Sentence;
import thalweg.ledger.Fact;
import thalweg.ledger.Revision;

/**
 * What an import would do, for a person to accept or not.
 *
 * @param revisions new and changed things, parents before children
 * @param facts that are not known yet
 * @param canyons how many canyons the file holds
 * @param added how many things are new
 * @param changes things that are here and would change, field by field
 * @param unchanged how many things and facts are here already or stand in the file before, word for word
 * @param remarks what a person should know before accepting
 */
public record ImportPlan(
        List<Revision> revisions,
        List<Fact> facts,
        int canyons,
        int added,
        List<FieldChange> changes,
        int unchanged,
        List<Sentence> remarks) {

    /**
     * One field that would change.
     *
     * @param thing type and label, such as "part left bolt"
     * @param field the key of the field
     * @param before empty where it was not there
     * @param after empty where it would go
     */
    public record FieldChange(String thing, String field, String before, String after) {}

    public ImportPlan {
        revisions = List.copyOf(revisions);
        facts = List.copyOf(facts);
        changes = List.copyOf(changes);
        remarks = List.copyOf(remarks);
    }

    /** Of a file from which nothing is taken. */
    public static final ImportPlan NOTHING = new ImportPlan(List.of(), List.of(), 0, 0, List.of(), 0, List.of());

    /** Whether accepting it would change nothing. */
    public boolean isEmpty() {
        return revisions.isEmpty() && facts.isEmpty();
    }

    /**
     * Works out what taking in those canyons would change.
     *
     * @param incoming as they were read
     * @param known what is here already
     * @param author under whose name changes to things are written
     * @param at the time that is written on them, RFC 3339 in UTC
     * @throws InputException when an id of the file stands for a thing of another type here
     */
    public static ImportPlan of(List<Parcel> incoming, Known known, String author, String at) {
        PlanBuilder builder = new PlanBuilder(known, author, at);
        incoming.forEach(builder::parcel);
        return builder.done(incoming.size());
    }
}
