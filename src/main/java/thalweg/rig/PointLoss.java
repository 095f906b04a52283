package thalweg.rig;

import java.util.Optional;

/**
 * What happens when one point lets go, from rest at the aim.
 *
 * @param point its name
 * @param aftermath what is left; empty where nothing connects the master any more
 */
public record PointLoss(String point, Optional<Aftermath> aftermath) {

    /** Whether a strand still connects the master. It says nothing about whether the rest is strong enough. */
    public boolean held() {
        return aftermath.isPresent();
    }
}
