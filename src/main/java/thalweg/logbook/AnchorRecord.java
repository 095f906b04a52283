package thalweg.logbook;

import java.util.List;
import java.util.Optional;
import thalweg.route.Anchor;

/**
 * An anchor with its parts.
 *
 * @param anchor as it is entered
 * @param parts in order
 */
public record AnchorRecord(Anchor anchor, List<PartRecord> parts) {

    public AnchorRecord {
        parts = List.copyOf(parts);
    }

    /** The worst condition of any part that has been seen. */
    public Optional<Condition> worst() {
        return parts.stream().flatMap(part -> part.state().condition().stream()).reduce(Condition::worse);
    }
}
