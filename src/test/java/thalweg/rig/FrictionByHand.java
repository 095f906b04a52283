package thalweg.rig;

import java.util.List;

/** A master on a strand over two points where friction holds it, by the optimiser of another library. */
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
        return held(
                input,
                cord(input.points().get(0).at(), first, stiffness / first),
                cord(input.points().get(1).at(), second, stiffness / second));
    }

    /** The same on a slider between two legs: each side is a leg and what it has of the slider, one behind the other. */
    static Held between(RigInput input, double first) {
        Limiters limiters = input.rig().limiters().orElseThrow();
        double slider = limiters.fromFocus().get(0).metres()
                + limiters.fromFocus().get(1).metres();
        return held(input, side(input, 0, first), side(input, 1, slider - first));
    }

    private static EnergyByHand.Cord side(RigInput input, int point, double metres) {
        Limiters limiters = input.rig().limiters().orElseThrow();
        double stiffness = input.rig().stiffness().inKilonewtons();
        Vector3 at = input.points().get(point).at();
        double leg = at.distance(input.rig().focus())
                - limiters.fromFocus().get(point).metres();
        double softness = leg / (input.rig().strands() * stiffness) + metres / (limiters.sliderStrands() * stiffness);
        double[] place = {at.x(), at.y(), at.z()};
        return new EnergyByHand.Cord(List.of(place, new double[] {0}), false, leg + metres, 1 / softness);
    }

    private static Held held(RigInput input, EnergyByHand.Cord first, EnergyByHand.Cord second) {
        Vector3 load = input.load()
                .direction(input.load().toward())
                .times(input.load().weight().inKilonewtons());
        EnergyByHand energy = new EnergyByHand(List.of(first, second), 1, List.of(load.x(), load.y(), load.z()));
        Vector3 focus = input.rig().focus();
        double[] rest = energy.minimum(new double[] {focus.x(), focus.y() - 0.01, focus.z() + 0.001});
        Vector3 master = new Vector3(rest[0], rest[1], rest[2]);
        double tight = energy.tension(0, rest);
        double loose = energy.tension(1, rest);
        Vector3 one = input.points().get(0).at();
        Vector3 other = input.points().get(1).at();
        double between = Math.toRadians(one.minus(master).degreesTo(other.minus(master)));
        return new Held(Math.log(tight / loose), Math.PI - between, tight / (tight + loose));
    }

    private static EnergyByHand.Cord cord(Vector3 point, double unloaded, double rate) {
        double[] place = {point.x(), point.y(), point.z()};
        return new EnergyByHand.Cord(List.of(place, new double[] {0}), true, unloaded, rate);
    }
}
