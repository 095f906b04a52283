package thalweg.logbook;

import java.util.List;
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

    /** How its parts stand together. */
    public Standing standing() {
        return Standing.of(parts);
    }
}
