package thalweg.rig;

import java.util.Optional;

/**
 * What pulls at a master: a force that is the same wherever it is, or one of the same size that is always directed to one
 * place, as by a rope that runs over it.
 *
 * @param force not of length 0; of one that is directed to a place only the size counts [kN]
 * @param toward that place [m]; empty for a force that keeps its direction
 */
record Pull(Vector3 force, Optional<Vector3> toward) {

    /** A force that keeps its direction. */
    static Pull of(Vector3 force) {
        return new Pull(force, Optional.empty());
    }
}
