package thalweg.amend;

import java.util.Optional;
import thalweg.ledger.Fact;
import thalweg.ledger.Hash;
import thalweg.ledger.Revision;
import thalweg.ledger.Uid;

/** What has to be asked of the ledger to tell what a change was about. */
public interface Known {

    /** The latest state of a thing. */
    Optional<Revision> head(Uid thing);

    /** The revision of that name. */
    Optional<Revision> revision(Hash name);

    /** The fact of that name. */
    Optional<Fact> fact(Uid name);
}
