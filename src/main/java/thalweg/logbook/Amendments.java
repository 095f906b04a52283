package thalweg.logbook;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import thalweg.ledger.Uid;

/** Works out which entries still count after corrections and withdrawals; the order in which they came never matters. */
public final class Amendments {

    private Amendments() {}

    /**
     * The same entries in the same order, each told whether another takes its place.
     *
     * <p>A correction that was itself corrected still keeps the first entry out: its own correction stands for both. Only
     * when the whole chain above an entry is withdrawn does the entry count again.
     *
     * @param entries all about one thing
     */
    public static <T> List<Entry<T>> settle(List<Entry<T>> entries) {
        Map<Uid, List<Entry<T>>> corrections = new HashMap<>();
        for (Entry<T> entry : entries) {
            entry.correction()
                    .ifPresent(correction -> corrections
                            .computeIfAbsent(correction.of(), of -> new ArrayList<>())
                            .add(entry));
        }
        return entries.stream()
                .map(entry -> entry.corrected(isCorrected(entry.uid(), corrections, new HashSet<>())))
                .toList();
    }

    /** Names are cut from hashes, so a chain cannot close; a file that claims one that does must still come to an end. */
    private static <T> boolean isCorrected(Uid entry, Map<Uid, List<Entry<T>>> corrections, Set<Uid> met) {
        return met.add(entry)
                && corrections.getOrDefault(entry, List.of()).stream()
                        .anyMatch(other -> other.withdrawal().isEmpty() || isCorrected(other.uid(), corrections, met));
    }

    /**
     * The entry that takes the place of another: its correction, or where that was withdrawn, a correction of the
     * correction. It may itself have been corrected since.
     *
     * @param entries all about the same thing
     */
    public static <T> Optional<Entry<T>> successor(Uid entry, List<Entry<T>> entries) {
        return successor(entry, entries, new HashSet<>());
    }

    private static <T> Optional<Entry<T>> successor(Uid entry, List<Entry<T>> entries, Set<Uid> met) {
        if (!met.add(entry)) {
            return Optional.empty();
        }
        List<Entry<T>> corrections = entries.stream()
                .filter(other -> other.correction()
                        .filter(correction -> correction.of().equals(entry))
                        .isPresent())
                .toList();
        return corrections.stream()
                .filter(other -> other.withdrawal().isEmpty())
                .findFirst()
                .or(() -> corrections.stream()
                        .flatMap(other -> successor(other.uid(), entries, met).stream())
                        .findFirst());
    }

    /** The contents of those that count. */
    public static <T> List<T> counting(List<Entry<T>> entries) {
        return entries.stream().filter(Entry::counts).map(Entry::content).toList();
    }
}
