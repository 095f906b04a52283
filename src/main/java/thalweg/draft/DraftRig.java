package thalweg.draft;

import java.util.Set;
import thalweg.rig.RigDraft;

/**
 * A rig on the screen that is not kept with its station.
 *
 * @param rig as it is
 * @param unstated what of it nobody has stated, by the names that the screen has for that
 */
public record DraftRig(RigDraft rig, Set<String> unstated) {

    public DraftRig {
        unstated = Set.copyOf(unstated);
    }
}
