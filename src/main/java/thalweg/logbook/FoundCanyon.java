package thalweg.logbook;

import java.util.Set;

/**
 * A canyon that fits or may fit.
 *
 * @param row as a list shows it
 * @param unknown the measures that are asked for and not known well enough to tell
 * @param whereUnknown whether region or country is asked for and unknown
 */
public record FoundCanyon(CanyonRow row, Set<CanyonMeasure> unknown, boolean whereUnknown) {

    public FoundCanyon {
        unknown = Set.copyOf(unknown);
    }

    /** Whether it surely fits. */
    public boolean fits() {
        return unknown.isEmpty() && !whereUnknown;
    }
}
