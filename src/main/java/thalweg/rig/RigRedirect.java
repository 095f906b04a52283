package thalweg.rig;

import java.util.Optional;
import thalweg.units.Force;

/**
 * A fixed place over which the rope runs between the master and the load, without friction. It neither moves nor gives.
 *
 * @param name not blank
 * @param at where it is [m]
 * @param strength what somebody believes it holds, above 0; empty where unknown
 * @param beyond the load as it hangs from the redirect: as stated
 */
public record RigRedirect(String name, Vector3 at, Optional<Force> strength, RigLoad beyond) {

    /** What one is called of which nobody stated a name. */
    public static final String UNNAMED = "redirect";

    public RigRedirect {
        if (name.isBlank() || strength.stream().anyMatch(force -> force.newtons() <= 0)) {
            throw new IllegalArgumentException("a redirect has a name, and a known strength is above 0");
        }
    }
}
