package thalweg.ledger;

import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Finds the revisions that nothing has followed yet. */
public final class Heads {

    private Heads() {}

    /** The revisions of one thing that are no parent of another, highest generation first, ties by hash. */
    public static List<Revision> of(Collection<Revision> revisions) {
        Set<Hash> followed = new HashSet<>();
        revisions.forEach(revision -> followed.addAll(revision.parents()));
        return revisions.stream()
                .filter(revision -> !followed.contains(revision.hash()))
                .sorted((one, other) -> {
                    int byGen = Long.compare(other.gen(), one.gen());
                    return byGen != 0 ? byGen : one.hash().compareTo(other.hash());
                })
                .toList();
    }
}
