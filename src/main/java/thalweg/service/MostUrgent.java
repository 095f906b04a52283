package thalweg.service;

import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;
import thalweg.due.Due;
import thalweg.due.DuePart;

/** Keeps the most urgent of parts that come one after the other, and counts all. Of one urgency those that came first. */
final class MostUrgent {

    private static final Comparator<Ranked> ORDER = Comparator.comparing(
                    (Ranked one) -> one.part().first(), Due.BY_URGENCY)
            .thenComparing(Ranked::came);

    private final int most;
    private final PriorityQueue<Ranked> kept = new PriorityQueue<>(ORDER.reversed());
    private int count;

    /**
     * @param most that are kept, 1 or more
     */
    MostUrgent(int most) {
        this.most = most;
    }

    /**
     * A part in its place.
     *
     * @param came how many came before
     */
    private record Ranked(DuePart part, int came) {}

    void add(DuePart part) {
        kept.add(new Ranked(part, count));
        count++;
        if (kept.size() > most) {
            kept.remove();
        }
    }

    /** How many came. */
    int count() {
        return count;
    }

    /** Those that are kept, the most urgent first. */
    List<DuePart> parts() {
        return kept.stream().sorted(ORDER).map(Ranked::part).toList();
    }
}
