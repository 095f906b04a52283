package thalweg.rig;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** How far a master moves along its load before a strand is taut. */
final class FreeTravel {

    private static final int HALVINGS = 60;
    private static final double FIRST_TRAVEL_METRES = 1e-3;

    /** A strand that is longer by this part counts as taut where the ends of slings find their places by a search. */
    private static final double JUST_TAUT = 1e-6;

    /** By which residuals of that search are judged [kN]. */
    private static final double SCALE_KN = 1;

    private final Network network;
    private final Energy energy;
    private final Vector3 from;
    private final Vector3 down;

    /** Puts the ends of slings where the strands store least; empty where the master is the only free node. */
    private final Optional<FindEquilibrium> ends;

    private FreeTravel(Network network, Vector3 from, Vector3 down) {
        boolean alone = network.free().size() == 1;
        this.network = alone ? network : network.withMasterHeld();
        this.energy = new Energy(this.network, Vector3.ZERO);
        this.ends = alone
                ? Optional.empty()
                : Optional.of(new FindEquilibrium(this.network, energy, SCALE_KN, FindEquilibrium.FAIR));
        this.from = from;
        this.down = down;
    }

    /**
     * The way [m], 0 where a strand is taut from the start.
     *
     * @param network whose free nodes are the master and ends of slings
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
        Vector3 master = from.plus(down.times(metres));
        if (ends.isPresent()) {
            return isTaut(master, ends.get());
        }
        double[] there = Energy.flat(List.of(master));
        return IntStream.range(0, network.strands().size()).anyMatch(strand -> energy.excess(strand, there) >= 0);
    }

    private boolean isTaut(Vector3 master, FindEquilibrium search) {
        energy.moveFixed(network.fixed().size() - 1, master.x(), master.y(), master.z());
        search.run();
        return IntStream.range(0, network.strands().size())
                .anyMatch(strand -> energy.excess(strand, search.places())
                        >= JUST_TAUT * network.strands().get(strand).unloadedMetres());
    }
}
