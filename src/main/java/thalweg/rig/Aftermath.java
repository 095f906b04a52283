package thalweg.rig;

import java.util.Optional;
import thalweg.units.Length;

/**
 * What a rig does after one of its points has let go.
 *
 * @param rest where it comes to rest; the point that was lost bears nothing
 * @param freeTravel how far the master moves along the load before a strand is taut again, 0 or more
 * @param drop how far along the load the master comes to rest from where it was; below 0 where it rises
 * @param swing how far across the load it comes to rest from where it was, 0 or more
 * @param peaks the largest forces on the way; empty where the motion could not be followed
 * @param within whether what is left stays within its strength on the way
 */
public record Aftermath(
        RigState rest,
        Length freeTravel,
        Length drop,
        Length swing,
        Optional<PeakForces> peaks,
        WithinStrength within) {

    public Aftermath {
        if (freeTravel.metres() < 0 || swing.metres() < 0) {
            throw new IllegalArgumentException("free travel and swing are 0 or more");
        }
    }
}
