package thalweg.rig;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import thalweg.units.Angle;

/**
 * What a rig's points bear when some of them have failed: at rest, and at the peak after a further failure, over the
 * directions of its load, each as it counts against its strength. Each is solved when it is first asked for.
 */
final class Responses {

    /** How far a straight line between two directions may be off, in parts of the load, at rest and at a peak. */
    private static final double REST_TOLERANCE = 1e-3;

    private static final double PEAK_TOLERANCE = 1e-2;

    private static final int REST_HALVINGS = 5;

    /** A peak takes a motion, which is a hundred times the work. */
    private static final int PEAK_HALVINGS = 3;

    private final RigInput input;
    private final double weight;
    private final int points;

    /** By the set of points that have failed. */
    private final List<DirectionTable> rest = new ArrayList<>();

    /** By the set of points that have failed, and the set of those that fail now. */
    private final List<DirectionTable> peaks = new ArrayList<>();

    private final boolean[] holds;
    private boolean rising;

    Responses(RigInput input) {
        this.input = input;
        this.weight = input.load().weight().inKilonewtons();
        this.points = input.points().size();
        int sets = 1 << points;
        this.holds = new boolean[sets];
        for (int i = 0; i < sets; i++) {
            int failed = i;
            holds[failed] = Remains.of(input, failed, input.rig().focus()).isPresent();
            rest.add(new DirectionTable(
                    REST_HALVINGS, REST_TOLERANCE * weight, place -> Optional.of(atRest(failed, place))));
            for (int j = 0; j < sets; j++) {
                int now = j;
                peaks.add(new DirectionTable(
                        PEAK_HALVINGS, PEAK_TOLERANCE * weight, place -> atPeak(failed, now, place)));
            }
        }
    }

    /** Whether anything still holds the master when those points have failed. */
    boolean holds(int failed) {
        return holds[failed];
    }

    /**
     * The forces at rest.
     *
     * @param failed a bit for each point that has
     * @param place of the direction in the sector
     */
    void rest(int failed, double place, double[] forces) {
        rest.get(failed).at(place, forces);
    }

    /**
     * The peaks after a further failure, from rest.
     *
     * @param failed a bit for each point that has before
     * @param now a bit for each that fails now, all at once
     * @return whether they are known
     */
    boolean peaks(int failed, int now, double place, double[] forces) {
        return peaks.get(failed << points | now).at(place, forces);
    }

    /** Whether some peak still rose at the end of the time that is followed. */
    boolean rising() {
        return rising;
    }

    /** By how much forces between solved directions may be off, in parts of the load. */
    double error() {
        double resting = rest.stream().mapToDouble(DirectionTable::error).max().orElse(0);
        double peaking = peaks.stream().mapToDouble(DirectionTable::error).max().orElse(0);
        return Math.max(resting, peaking) / weight;
    }

    private Equilibrium equilibrium(int failed, Vector3 direction) {
        Network network = Remains.of(input, failed, input.rig().focus()).orElseThrow();
        return FindEquilibrium.of(network, direction.times(weight));
    }

    /** The forces at rest, solved and not taken from the table [kN]. */
    double[] atRest(int failed, double place) {
        Equilibrium rest = equilibrium(failed, direction(place));
        return IntStream.range(0, points)
                .mapToDouble(point -> input.points().get(point).counted(rest.pullOnPoint(point)))
                .toArray();
    }

    /** The peaks, solved and not taken from the table [kN]; empty where the motion cannot be followed. */
    Optional<double[]> atPeak(int failed, int now, double place) {
        Vector3 direction = direction(place);
        Vector3 from = equilibrium(failed, direction).master();
        Network left = Remains.of(input, failed | now, from).orElseThrow();
        HangingMass mass = new HangingMass(left, input.load(), direction);
        Optional<Motion.Peaks> motion = Motion.of(mass, input);
        motion.ifPresent(known -> rising = rising || known.rising());
        return motion.map(Motion.Peaks::counted);
    }

    private Vector3 direction(double place) {
        double part = 2 * place / DirectionTable.CELLS - 1;
        double toward =
                input.load().toward().degrees() + part * input.load().sway().degrees();
        return input.load().direction(new Angle(toward));
    }
}
