package thalweg.tui.screen;

import java.util.Optional;
import thalweg.rig.BestFocus;
import thalweg.rig.Cascade;
import thalweg.rig.CascadeOdds;
import thalweg.rig.PeakRange;

/**
 * What was studied about a rig when somebody asked for it, since it takes longer than a key may wait. A rig that is
 * changed has not been studied.
 *
 * @param best where the focus would spare the weakest point most
 * @param running the cascade that is being computed; empty where none is
 * @param odds what the cascade has come to so far
 * @param peaks between what the model peaks lie
 */
record RigStudies(
        Optional<BestFocus> best, Optional<Cascade> running, Optional<CascadeOdds> odds, Optional<PeakRange> peaks) {

    static final RigStudies NONE =
            new RigStudies(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());

    RigStudies with(PeakRange range) {
        return new RigStudies(best, running, odds, Optional.of(range));
    }

    RigStudies with(BestFocus found) {
        return new RigStudies(Optional.of(found), running, odds, peaks);
    }

    /** With a cascade that has just begun. */
    RigStudies beginning(Cascade cascade, CascadeOdds first) {
        return new RigStudies(best, Optional.of(cascade), Optional.of(first), peaks);
    }

    /** With what a block of trials came to. */
    RigStudies with(CascadeOdds next) {
        return new RigStudies(best, next.finished() ? Optional.empty() : running, Optional.of(next), peaks);
    }

    /** With what was counted until somebody stopped it. */
    RigStudies stopped() {
        return new RigStudies(best, Optional.empty(), odds, peaks);
    }

    /** Whether that cascade is the one that is being computed. */
    boolean runs(Cascade cascade) {
        return running.filter(one -> one == cascade).isPresent();
    }
}
