package thalweg.service;

import thalweg.rig.Cascade;
import thalweg.rig.CascadeOdds;
import thalweg.rig.CascadeWatch;
import thalweg.rig.RigInput;

/** Lets the points of a rig fail by chance, which takes seconds, and minutes where many points hang on a rope. */
public final class RunCascade {

    private RunCascade() {}

    /** All trials, or as many as the watch lets pass. */
    public static CascadeOdds all(RigInput input, int trials, long seed, CascadeWatch watch) {
        return Cascade.of(input, trials, seed, watch);
    }

    /** One more block of trials, so that whoever asks can show how far it is, and stop. */
    public static CascadeOdds next(Cascade cascade, CascadeOdds before) {
        return cascade.next(before);
    }
}
