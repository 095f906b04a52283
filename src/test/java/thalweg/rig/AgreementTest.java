package thalweg.rig;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * The answer against Hipparchus 4.0, a general-purpose library, which minimises an energy that is written here from the
 * rig itself and knows nothing of networks.
 */
class AgreementTest {

    private static final double PARTS_OF_LOAD = 1e-6;

    @Test
    void forcesOfSeveralHundredRigsAgreeWithAnotherOptimiser() {
        int slack = 0;
        for (RigInput input : RandomRigs.some(20_260, 400).toList()) {
            slack += assertAgreement(input);
        }
        assertThat(slack).as("legs that hang slack are among them").isGreaterThan(100);
    }

    @ParameterizedTest
    @EnumSource(
            value = RigKind.class,
            names = {"SINGLE", "SLIDING", "LOOP"})
    void otherKindsAgreeWithItToo(RigKind kind) {
        RandomRigs.some(kind, 20_261, 120).forEach(AgreementTest::assertAgreement);
    }

    /** How many points hang slack. */
    private static int assertAgreement(RigInput input) {
        RigState steady = Rigs.steady(input);
        EnergyByHand energy = energy(input);
        double[] rest = energy.minimum(start(input));
        double load = input.load().weight().inKilonewtons();

        assertThat(energy.slope(rest)).as("the other optimiser is at rest").isLessThan(1e-8 * load);
        int slack = 0;
        for (int i = 0; i < input.points().size(); i++) {
            double[] at = place(input.points().get(i).at());
            double theirs = energy.pull(at, rest);
            slack += theirs == 0 ? 1 : 0;
            assertThat(steady.points().get(i).force().inKilonewtons())
                    .as("%s, point %s", input, i)
                    .isCloseTo(theirs, within(PARTS_OF_LOAD * load));
        }
        return slack;
    }

    private static double[] start(RigInput input) {
        Vector3 focus = input.rig().focus();
        return new double[] {focus.x() + 1e-3, focus.y() - 1e-2, focus.z() + 1e-3};
    }

    private static double[] place(Vector3 at) {
        return new double[] {at.x(), at.y(), at.z()};
    }

    private static EnergyByHand energy(RigInput input) {
        double toward = input.load().toward().inRadians();
        double lean = input.load().leanOut().inRadians();
        double weight = input.load().weight().inKilonewtons();
        return new EnergyByHand(
                cords(input),
                1,
                List.of(
                        weight * Math.sin(toward) * Math.cos(lean),
                        -weight * Math.cos(toward) * Math.cos(lean),
                        weight * Math.sin(lean)));
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
            case LIMITED -> throw new AssertionError("not built");
        };
    }

    private static double between(double[] one, double[] other) {
        double sum = 0;
        for (int axis = 0; axis < 3; axis++) {
            sum += (one[axis] - other[axis]) * (one[axis] - other[axis]);
        }
        return Math.sqrt(sum);
    }

    /** Where the master rests according to the other optimiser [m]; the benchmarks measure that too. */
    static double[] theirRest(RigInput input) {
        return energy(input).minimum(start(input));
    }
}
