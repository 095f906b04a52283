package thalweg.exchange;

import java.util.Optional;
import thalweg.ledger.Fact;
import thalweg.ledger.Revision;
import thalweg.ledger.Uid;

/** What a database knows already, as far as an import has to ask. */
public interface Known {

    /** The latest state of a thing. */
    Optional<Revision> head(Uid thing);

    /** Whether that fact is known, or one that says the same of the same thing. */
    boolean says(Fact fact);

    /** Whether that fact is known and was corrected or withdrawn here. */
    boolean isAmended(Fact fact);

    /** Whether there is another canyon of that name under another id. */
    boolean hasOtherCanyonNamed(String name, Uid uid);
}
