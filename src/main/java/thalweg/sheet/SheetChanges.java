package thalweg.sheet;

import java.util.List;
import thalweg.route.PartialDate;

/**
 * What the records say otherwise than an earlier sheet, in words.
 *
 * @param earlier number of that sheet, as it stands on it
 * @param on when it was written
 * @param groups of what changed, what matters most first; empty where nothing did
 */
public record SheetChanges(String earlier, PartialDate on, List<Group> groups) {

    /**
     * Changes of one kind.
     *
     * @param heading not blank
     * @param lines not empty
     */
    public record Group(String heading, List<Words> lines) {
        public Group {
            lines = List.copyOf(lines);
        }
    }

    public SheetChanges {
        groups = List.copyOf(groups);
    }
}
