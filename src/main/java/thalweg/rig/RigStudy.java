package thalweg.rig;

import java.util.Optional;

/**
 * An answer with what takes longer to compute, as far as somebody asked for it.
 *
 * @param answer what the model says about the rig
 * @param bestFocus where the focus would spare the weakest point most
 * @param cascade how often points fail by chance
 * @param peakRange between what the model peaks lie
 * @param comparison the layouts side by side
 */
public record RigStudy(
        RigAnswer answer,
        Optional<BestFocus> bestFocus,
        Optional<CascadeOdds> cascade,
        Optional<PeakRange> peakRange,
        Optional<RigComparison> comparison) {

    /** The answer, and nothing that takes longer. */
    public static RigStudy of(RigAnswer answer) {
        return new RigStudy(answer, Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
    }

    /** The same with the best focus. */
    public RigStudy withBestFocus() {
        return new RigStudy(answer, Optional.of(FindBestFocus.of(answer.input())), cascade, peakRange, comparison);
    }

    /** The same with how often points fail by chance. */
    public RigStudy with(Optional<CascadeOdds> odds) {
        return new RigStudy(answer, bestFocus, odds, peakRange, comparison);
    }

    /** The same with between what the peaks lie. */
    public RigStudy withPeakRange() {
        return new RigStudy(answer, bestFocus, cascade, Optional.of(FindPeakRange.of(answer)), comparison);
    }

    /** The same with the layouts side by side. */
    public RigStudy comparing(RigPriority priority) {
        return new RigStudy(
                answer, bestFocus, cascade, peakRange, Optional.of(CompareLayouts.of(answer.input(), priority)));
    }
}
