package thalweg.rig;

import java.util.ArrayList;
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

    static EnergyByHand energy(RigInput input) {
        return new EnergyByHand(cords(input), 1, load(input));
    }

    private static List<EnergyByHand.Cord> cords(RigInput input) {
        double[] master = {0};
        List<double[]> points =
                input.points().stream().map(point -> place(point.at())).toList();
        double stiffness = input.rig().strands() * input.rig().stiffness().inKilonewtons();
        List<EnergyByHand.Cord> legs = new ArrayList<>();
        List<double[]> ring = new ArrayList<>();
        double toPoints = 0;
        for (int i = 0; i < points.size(); i++) {
            double way = between(points.get(i), place(input.rig().focus()));
            double rest = way + input.rig().slack().get(i).metres();
            legs.add(new EnergyByHand.Cord(List.of(points.get(i), master), false, rest, stiffness / rest));
            ring.add(points.get(i));
            ring.add(master);
            toPoints += way;
        }
        return switch (input.rig().kind()) {
            case SINGLE, FOCUSED -> legs;
            case SLIDING -> List.of(new EnergyByHand.Cord(ring, true, 2 * toPoints, stiffness / (2 * toPoints)));
            case LOOP -> {
                double around = toPoints + between(points.get(0), points.get(1));
                yield List.of(new EnergyByHand.Cord(
                        List.of(points.get(0), points.get(1), master), true, around, stiffness / around));
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
