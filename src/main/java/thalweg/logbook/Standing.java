package thalweg.logbook;

import java.util.Collection;
import java.util.List;
import java.util.Optional;

/**
 * How parts stand that are looked at together. What is gone holds nothing and is counted apart: it must not hide the
 * condition of what is still there.
 *
 * @param worst condition of any part that is there and has been seen; empty where there is none
 * @param gone how many were found to be gone, 0 or more
 * @param neverSeen how many nobody has seen since they were entered, 0 or more
 */
public record Standing(Optional<Condition> worst, int gone, int neverSeen) {

    /** Where there are no parts. */
    public static final Standing NOTHING = new Standing(Optional.empty(), 0, 0);

    public Standing {
        if (worst.filter(Condition.GONE::equals).isPresent()) {
            throw new IllegalArgumentException("what is gone is counted, and not the worst of what is there");
        }
    }

    /** The standing of parts. */
    public static Standing of(Collection<PartRecord> parts) {
        List<Optional<Condition>> conditions =
                parts.stream().map(part -> part.state().condition()).toList();
        int seen = (int) conditions.stream().filter(Optional::isPresent).count();
        int gone = (int)
                conditions.stream().filter(Optional.of(Condition.GONE)::equals).count();
        Optional<Condition> worst = conditions.stream()
                .flatMap(Optional::stream)
                .filter(condition -> condition != Condition.GONE)
                .reduce(Condition::worse);
        return new Standing(worst, gone, conditions.size() - seen);
    }

    /** The standing of these parts and those. */
    public Standing and(Standing other) {
        Optional<Condition> both = worst.isPresent() && other.worst.isPresent()
                ? Optional.of(Condition.worse(worst.get(), other.worst.get()))
                : worst.or(() -> other.worst);
        return new Standing(both, gone + other.gone, neverSeen + other.neverSeen);
    }

    /** The condition that stands for all: the worst of what is there, gone where nothing else was found, or none. */
    public Optional<Condition> condition() {
        return worst.or(() -> gone > 0 ? Optional.of(Condition.GONE) : Optional.empty());
    }
}
