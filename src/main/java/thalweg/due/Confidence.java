package thalweg.due;

import java.time.LocalDate;
import java.util.Optional;
import thalweg.logbook.PartState;
import thalweg.route.PartialDate;

/**
 * How far the last look at a part can still be relied on. It fades with time: within the part's interval of examination it
 * stands, within twice that it is old, beyond that it says little about today. The steps are our choice.
 */
public enum Confidence {
    STANDS,
    OLD,
    SAYS_LITTLE,
    NONE;

    private static final int OLD_UNTIL_INTERVALS = 2;

    /**
     * What is left of it.
     *
     * @param months of the part's interval of examination, above 0
     */
    static Confidence of(PartState state, int months, LocalDate today) {
        Optional<LocalDate> seen = state.seenOn().map(PartialDate::earliest);
        if (seen.isEmpty()) {
            return NONE;
        }
        boolean stands = !seen.get().plusMonths(months).isBefore(today);
        boolean old =
                !seen.get().plusMonths((long) OLD_UNTIL_INTERVALS * months).isBefore(today);
        if (stands && !state.contradictory()) {
            return STANDS;
        }
        return stands || old ? OLD : SAYS_LITTLE;
    }
}
