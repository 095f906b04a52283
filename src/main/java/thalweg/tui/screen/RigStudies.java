package thalweg.tui.screen;

import java.util.Optional;
import thalweg.rig.BestFocus;

/**
 * What was studied about a rig when somebody asked for it, since it takes longer than a key may wait. A rig that is
 * changed has not been studied.
 *
 * @param best where the focus would spare the weakest point most
 */
record RigStudies(Optional<BestFocus> best) {

    static final RigStudies NONE = new RigStudies(Optional.empty());

    RigStudies with(BestFocus found) {
        return new RigStudies(Optional.of(found));
    }
}
