package thalweg.rig;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** Cords of a rig of each kind but the limited one, for {@link EnergyByHand}, from the rig itself. */
final class RigByHand {

    private RigByHand() {}

    /** Three components of the load at the aim [kN]. */
    static List<Double> load(RigInput input) {
        double toward = input.load().toward().inRadians();
        double lean = input.load().leanOut().inRadians();
        double weight = input.load().weight().inKilonewtons();
        return List.of(
                weight * Math.sin(toward) * Math.cos(lean),
                -weight * Math.cos(toward) * Math.cos(lean),
                weight * Math.sin(lean));
    }

    static double[] place(Vector3 at) {
        return new double[] {at.x(), at.y(), at.z()};
    }

    /** The energy over the ends of slings that end before the master, in the order of their points, and the master. */
    static EnergyByHand energy(RigInput input) {
        List<EnergyByHand.Cord> cords = new ArrayList<>();
        List<double[]> ends = new ArrayList<>();
        List<double[]> stops = new ArrayList<>();
        int slung = (int) input.points().stream()
                .filter(point -> point.sling().flatMap(RigSling::reach).isPresent())
                .count();
        double[] master = {slung};
        double[] focus = place(input.rig().focus());
        int nodes = 0;
        for (RigPoint point : input.points()) {
            double[] at = place(point.at());
            double[] end = at;
            double[] stop = at;
            if (point.sling().isPresent()) {
                RigSling sling = point.sling().get();
                boolean before = sling.reach().isPresent();
                double part = before ? sling.reach().get().metres() / between(at, focus) : 1;
                end = new double[3];
                for (int axis = 0; axis < 3; axis++) {
                    end[axis] = at[axis] + part * (focus[axis] - at[axis]);
                }
                stop = before ? new double[] {nodes++} : master;
                double slack = before ? 0 : input.rig().slack().get(ends.size()).metres();
                cords.addAll(sides(sling, input, at, end, stop, slack));
            }
            ends.add(end);
            stops.add(stop);
        }
        cords.addAll(cords(input, ends, stops, master));
        return new EnergyByHand(cords, slung + 1, load(input));
    }

    /** Where the free nodes of that energy are in a state of the rig. */
    static double[] places(RigInput input, RigState state) {
        List<Double> places = new ArrayList<>();
        for (RigPoint point : input.points()) {
            if (point.sling().flatMap(RigSling::reach).isPresent()) {
                Vector3 end = state.strands().stream()
                        .filter(strand -> strand.label().equals(point.name() + " sling"))
                        .map(strand -> strand.path().get(1))
                        .findFirst()
                        .orElseThrow();
                Collections.addAll(places, end.x(), end.y(), end.z());
            }
        }
        Collections.addAll(
                places, state.master().x(), state.master().y(), state.master().z());
        return places.stream().mapToDouble(Double::doubleValue).toArray();
    }

    /** The places at which a sling leaves its point: half its width to either side, square to its line, level if it can be. */
    static List<double[]> sides(RigSling sling, double[] at, double[] focus) {
        if (sling.tie() == SlingTie.CHOKE) {
            return List.of(at);
        }
        double length = between(at, focus);
        double along = (focus[0] - at[0]) / length;
        double[] square = new double[3];
        for (int axis = 0; axis < 3; axis++) {
            square[axis] = (axis == 0 ? 1 : 0) - along * (focus[axis] - at[axis]) / length;
        }
        double half = sling.width().metres() / 2 / Math.sqrt(1 - along * along);
        double[] left = new double[3];
        double[] right = new double[3];
        for (int axis = 0; axis < 3; axis++) {
            left[axis] = at[axis] - half * square[axis];
            right[axis] = at[axis] + half * square[axis];
        }
        return half == 0 ? List.of(left) : List.of(left, right);
    }

    /** Whether the master, ends of slings or points lie together: the energy has a kink there. */
    static boolean hasMet(RigInput input, RigState state) {
        double[] free = places(input, state);
        List<double[]> all = new ArrayList<>();
        for (int i = 0; i < free.length; i += 3) {
            double[] node = {free[i], free[i + 1], free[i + 2]};
            all.add(node);
        }
        int movable = all.size();
        input.points().forEach(point -> all.add(place(point.at())));
        for (int i = 0; i < movable; i++) {
            for (int j = i + 1; j < all.size(); j++) {
                if (between(all.get(i), all.get(j)) < 1e-4) {
                    return true;
                }
            }
        }
        return false;
    }

    private static List<EnergyByHand.Cord> sides(
            RigSling sling, RigInput input, double[] at, double[] end, double[] stop, double slack) {
        int strands = sling.tie() == SlingTie.TIED_ROUND ? 1 : 2;
        double stiffness = sling.stiffness().orElse(input.rig().stiffness()).inKilonewtons();
        List<double[]> sides = sides(sling, at, place(input.rig().focus()));
        int together = sling.tie() != SlingTie.CHOKE && sides.size() == 1 ? 2 : 1;
        return sides.stream()
                .map(side -> {
                    double rest = between(side, end) + slack;
                    return new EnergyByHand.Cord(
                            List.of(side, stop), false, rest, together * strands * stiffness / rest);
                })
                .toList();
    }

    private static List<EnergyByHand.Cord> cords(
            RigInput input, List<double[]> ends, List<double[]> stops, double[] master) {
        double stiffness = input.rig().strands() * input.rig().stiffness().inKilonewtons();
        List<EnergyByHand.Cord> legs = new ArrayList<>();
        List<double[]> ring = new ArrayList<>();
        double toPoints = 0;
        for (int i = 0; i < ends.size(); i++) {
            double way = between(ends.get(i), place(input.rig().focus()));
            double rest = way + input.rig().slack().get(i).metres();
            if (stops.get(i) != master) {
                legs.add(new EnergyByHand.Cord(List.of(stops.get(i), master), false, rest, stiffness / rest));
            }
            ring.add(stops.get(i));
            ring.add(master);
            toPoints += way;
        }
        return switch (input.rig().kind()) {
            case SINGLE, FOCUSED -> legs;
            case SLIDING -> List.of(new EnergyByHand.Cord(ring, true, 2 * toPoints, stiffness / (2 * toPoints)));
            case LOOP -> {
                double around = toPoints + between(ends.get(0), ends.get(1));
                yield List.of(new EnergyByHand.Cord(
                        List.of(stops.get(0), stops.get(1), master), true, around, stiffness / around));
            }
            case LIMITED -> throw new AssertionError("its energy is LimitedByHand");
        };
    }

    private static double between(double[] one, double[] other) {
        double sum = 0;
        for (int axis = 0; axis < 3; axis++) {
            sum += (one[axis] - other[axis]) * (one[axis] - other[axis]);
        }
        return Math.sqrt(sum);
    }
}
