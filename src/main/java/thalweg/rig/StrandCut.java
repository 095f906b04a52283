package thalweg.rig;

import java.util.Optional;
import thalweg.fault.Sentence;

/**
 * What happens when one strand is cut at one place.
 *
 * @param strand such as "A leg"
 * @param held whether another strand still connects the master
 * @param asLossOf the point whose loss it is like; empty where it is like none: all is lost, or a strand beside it holds
 */
public record StrandCut(String strand, boolean held, Optional<String> asLossOf) {

    /** The name of the strand as it is said. */
    public Sentence called() {
        return StrandNames.said(strand);
    }
}
