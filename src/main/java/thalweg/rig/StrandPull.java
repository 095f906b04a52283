package thalweg.rig;

import java.util.List;
import thalweg.units.Force;

/**
 * A strand under load.
 *
 * @param label such as "A leg"
 * @param path the places it passes, at least 2, in order [m]
 * @param closed whether it goes on from the last place to the first
 * @param count identical parallel strands, 1 or more
 * @param tension in one of them
 * @param loaded whether it carries at least a millionth of the load
 */
public record StrandPull(String label, List<Vector3> path, boolean closed, int count, Force tension, boolean loaded) {

    public StrandPull {
        path = List.copyOf(path);
    }
}
