package thalweg.rig;

import java.util.Optional;
import thalweg.units.Force;

/**
 * A fixed point of an anchor.
 *
 * @param name not blank
 * @param at where it is [m]
 * @param strength the median of what somebody believes it holds, above 0; empty where unknown
 * @param spread log-standard-deviation of that belief [-], 0 or more
 * @param holdsAlone whether somebody believes that it would hold the whole load by itself; empty where unknown
 * @param is what the point is; empty where nobody said
 * @param sling what is slung round it; empty where the rig is clipped or tied to the point itself
 */
public record RigPoint(
        String name,
        Vector3 at,
        Optional<Force> strength,
        double spread,
        Optional<Boolean> holdsAlone,
        Optional<PointKind> is,
        Optional<RigSling> sling) {

    public RigPoint {
        if (name.isBlank() || !Double.isFinite(spread) || spread < 0) {
            throw new IllegalArgumentException("a point has a name and a spread of 0 or more");
        }
        if (strength.isPresent() && strength.get().newtons() <= 0) {
            throw new IllegalArgumentException("a known strength is above 0");
        }
    }

    /** A point of which nobody said what it is, with nothing slung round it. */
    public RigPoint(String name, Vector3 at, Optional<Force> strength, double spread, Optional<Boolean> holdsAlone) {
        this(name, at, strength, spread, holdsAlone, Optional.empty(), Optional.empty());
    }
}
