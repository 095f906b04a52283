package thalweg.rig;

import java.util.Optional;

/** What is left of the strands of a rig when several of its points have let go. */
final class Remains {

    private Remains() {}

    /**
     * The network that is left; empty where nothing holds the master any more.
     *
     * @param lost a bit for each point, the first point the lowest
     * @param master where the master starts from [m]
     */
    static Optional<Network> of(RigInput input, int lost, Vector3 master) {
        return lost == 0
                ? Optional.of(LayStrands.of(input))
                : LayStrands.leftWithout(input, lost, master)
                        .map(left -> Splice.of(left).network());
    }
}
