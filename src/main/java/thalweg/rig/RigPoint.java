package thalweg.rig;

import java.util.Optional;
import thalweg.units.Force;

/**
 * A fixed point of an anchor.
 *
 * @param name not blank
 * @param at where it is [m]
 * @param strength the median of what somebody believes it holds, above 0; of a bolt with two strengths the one across its
 *     axis; empty where unknown
 * @param spread log-standard-deviation of that belief [-], 0 or more
 * @param holdsAlone whether somebody believes that it would hold the whole load by itself; empty where unknown
 * @param traits what else is known of it
 * @param is what the point is; empty where nobody said
 * @param sling what is slung round it; empty where the rig is clipped or tied to the point itself
 */
public record RigPoint(
        String name,
        Vector3 at,
        Optional<Force> strength,
        double spread,
        Optional<Boolean> holdsAlone,
        PointTraits traits,
        Optional<PointKind> is,
        Optional<RigSling> sling) {

    public RigPoint {
        if (name.isBlank() || !Double.isFinite(spread) || spread < 0) {
            throw new IllegalArgumentException("a point has a name and a spread of 0 or more");
        }
        if (strength.isPresent() && strength.get().newtons() <= 0) {
            throw new IllegalArgumentException("a known strength is above 0");
        }
        if (traits.bolt().isPresent() && !strength.equals(traits.bolt().map(BoltStrength::radial))) {
            throw new IllegalArgumentException("a bolt is as strong as it is across its axis");
        }
    }

    /** A point of which nothing else is known, with nothing slung round it. */
    public RigPoint(String name, Vector3 at, Optional<Force> strength, double spread, Optional<Boolean> holdsAlone) {
        this(name, at, strength, spread, holdsAlone, PointTraits.NONE, Optional.empty(), Optional.empty());
    }

    /**
     * How hard a pull counts against the strength [kN]: as hard as it is, or for a bolt of two strengths as hard as the
     * pull straight across its axis that uses up as much of it.
     *
     * @param pull on the point [kN]
     */
    double counted(Vector3 pull) {
        return traits.bolt().map(bolt -> bolt.alike(pull)).orElseGet(pull::length);
    }
}
