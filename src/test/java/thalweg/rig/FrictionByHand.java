package thalweg.rig;

import java.util.List;

/** A sliding loop over two points whose master friction holds, by the optimiser of another library. */
final class FrictionByHand {

    private FrictionByHand() {}

    /**
     * What the two sides do.
     *
     * @param logOfRatio of their tensions
     * @param turn of the strand around the master [rad]
     * @param share of the first point
     */
    record Held(double logOfRatio, double turn, double share) {}

    /** The unloaded length of the whole loop [m]. */
    static double unloaded(RigInput input) {
        return 2
                * input.points().stream()
                        .mapToDouble(point -> point.at().distance(input.rig().focus()))
                        .sum();
    }

    /** The master at rest with that much unloaded strand on the side of the first point [m]. */
    static Held at(RigInput input, double first) {
        double stiffness = input.rig().stiffness().inKilonewtons();
        double second = unloaded(input) - first;
        Vector3 one = input.points().get(0).at();
        Vector3 other = input.points().get(1).at();
        Vector3 load = input.load()
                .direction(input.load().toward())
                .times(input.load().weight().inKilonewtons());
        EnergyByHand energy = new EnergyByHand(
                List.of(cord(one, first, stiffness), cord(other, second, stiffness)),
                1,
                List.of(load.x(), load.y(), load.z()));
        Vector3 focus = input.rig().focus();
        double[] rest = energy.minimum(new double[] {focus.x(), focus.y() - 0.01, focus.z() + 0.001});
        Vector3 master = new Vector3(rest[0], rest[1], rest[2]);
        double tight = energy.tension(0, rest);
        double loose = energy.tension(1, rest);
        double between = Math.toRadians(one.minus(master).degreesTo(other.minus(master)));
        return new Held(Math.log(tight / loose), Math.PI - between, tight / (tight + loose));
    }

    private static EnergyByHand.Cord cord(Vector3 point, double unloaded, double stiffness) {
        double[] place = {point.x(), point.y(), point.z()};
        return new EnergyByHand.Cord(List.of(place, new double[] {0}), true, unloaded, stiffness / unloaded);
    }
}
