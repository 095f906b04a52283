package thalweg.logbook;

import java.util.Optional;
import thalweg.route.PartialDate;

/**
 * What is known of a part's condition now.
 *
 * @param condition when it was last seen; empty where nobody has seen it since it was entered
 * @param seenOn when that was; present exactly where the condition is
 * @param contradictory whether entries that may all be the last disagree, so that the worst of them is shown
 * @param notSeenSince the latest later visit on which it was not seen, if there was one
 * @param entries how many inspections there are in all
 */
public record PartState(
        Optional<Condition> condition,
        Optional<PartialDate> seenOn,
        boolean contradictory,
        Optional<PartialDate> notSeenSince,
        int entries) {

    /** No inspection at all. */
    public static final PartState NEVER_INSPECTED =
            new PartState(Optional.empty(), Optional.empty(), false, Optional.empty(), 0);

    public PartState {
        if (condition.isPresent() != seenOn.isPresent() || entries < 0) {
            throw new IllegalArgumentException("a condition was seen on some day");
        }
    }
}
