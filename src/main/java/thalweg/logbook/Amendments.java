package thalweg.logbook;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
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

    /** The contents of those that count. */
    public static <T> List<T> counting(List<Entry<T>> entries) {
        return entries.stream().filter(Entry::counts).map(Entry::content).toList();
    }
}
