package thalweg.logbook;

import java.time.LocalDate;
import java.util.Set;
import thalweg.route.PartKind;

/**
 * Which parts may be due, so that a database need not hand out all: those found worse than sound, those whose entries
 * disagree, those that nobody has seen, those last seen long ago, and textile that is old or of unknown age. More than are
 * due, never fewer.
 *
 * @param seenBy last seen on that day or before
 * @param placedBy textile placed or replaced on that day or before
 * @param textile the kinds that are
 */
public record DueCandidates(LocalDate seenBy, LocalDate placedBy, Set<PartKind> textile) {
    public DueCandidates {
        textile = Set.copyOf(textile);
    }
}
