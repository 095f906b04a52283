package thalweg.rig;

import java.util.List;
import java.util.stream.IntStream;

/** How far a master moves along its load before a strand is taut. */
final class FreeTravel {

    private static final int HALVINGS = 60;
    private static final double FIRST_TRAVEL_METRES = 1e-3;

    private final Network network;
    private final Energy energy;
    private final Vector3 from;
    private final Vector3 down;

    private FreeTravel(Network network, Vector3 from, Vector3 down) {
        this.network = network;
        this.energy = new Energy(network, Vector3.ZERO);
        this.from = from;
        this.down = down;
    }

    /**
     * The way [m], 0 where a strand is taut from the start.
     *
     * @param network whose only free node is the master
     * @param from where the master starts [m]
     * @param down direction of the load, a unit vector
     */
    static double of(Network network, Vector3 from, Vector3 down) {
        return new FreeTravel(network, from, down).metres();
    }

    private double metres() {
        double slack = 0;
        double taut = FIRST_TRAVEL_METRES;
        if (isTaut(0)) {
            return 0;
        }
        while (!isTaut(taut)) {
            slack = taut;
            taut *= 2;
        }
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (slack + taut) / 2;
            if (isTaut(middle)) {
                taut = middle;
            } else {
                slack = middle;
            }
        }
        return taut;
    }

    private boolean isTaut(double metres) {
        double[] there = Energy.flat(List.of(from.plus(down.times(metres))));
        return IntStream.range(0, network.strands().size()).anyMatch(strand -> energy.excess(strand, there) >= 0);
    }
}
