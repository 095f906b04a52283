package thalweg.rig;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

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

    /** A ring on a cord between knots, by an energy of its own, whose slope is held against its values as well. */
    @Test
    void limitedRigsAgreeWithItWhereverTheMasterRests() {
        int[] against = new int[2];
        int off = 0;
        for (RigInput input : RandomRigs.some(RigKind.LIMITED, 20_262, 400).toList()) {
            RigState steady = Rigs.steady(input);
            LimitedByHand energy = new LimitedByHand(input, RigByHand.load(input));
            double[] rest = energy.minimum(start(input));
            double load = input.load().weight().inKilonewtons();

            assertThat(new Vector3(energy.slope(rest)[0], energy.slope(rest)[1], energy.slope(rest)[2]).length())
                    .as("the other optimiser is at rest")
                    .isLessThan(1e-8 * load);
            for (int i = 0; i < 2; i++) {
                assertThat(steady.points().get(i).force().inKilonewtons())
                        .as("%s, point %s", input, i)
                        .isCloseTo(energy.pull(i, rest), within(PARTS_OF_LOAD * load));
                against[i] += steady.knots().get(i).againstMaster() ? 1 : 0;
            }
            off += steady.knots().stream().noneMatch(KnotPlace::againstMaster) ? 1 : 0;
        }
        assertThat(List.of(off, against[0], against[1])).allMatch(count -> count > 40);
    }

    @Test
    void theSlopeOfThatEnergyIsTheSlopeOfItsValues() {
        for (RigInput input : RandomRigs.some(RigKind.LIMITED, 20_263, 60).toList()) {
            LimitedByHand energy = new LimitedByHand(input, RigByHand.load(input));
            double[] ring = start(input);
            double step = 1e-6;
            for (int axis = 0; axis < 3; axis++) {
                double[] up = ring.clone();
                double[] down = ring.clone();
                up[axis] += step;
                down[axis] -= step;
                assertThat(energy.slope(ring)[axis])
                        .isCloseTo((energy.energy(up) - energy.energy(down)) / (2 * step), within(1e-2));
            }
        }
    }

    /** How many points hang slack. */
    private static int assertAgreement(RigInput input) {
        RigState steady = Rigs.steady(input);
        EnergyByHand energy = RigByHand.energy(input);
        double[] rest = energy.minimum(start(input));
        double load = input.load().weight().inKilonewtons();

        assertThat(energy.slope(rest)).as("the other optimiser is at rest").isLessThan(1e-8 * load);
        int slack = 0;
        for (int i = 0; i < input.points().size(); i++) {
            double[] at = RigByHand.place(input.points().get(i).at());
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

    /** Where the master rests according to the other optimiser [m]; the benchmarks measure that too. */
    static double[] theirRest(RigInput input) {
        return input.rig().kind() == RigKind.LIMITED
                ? new LimitedByHand(input, RigByHand.load(input)).minimum(start(input))
                : RigByHand.energy(input).minimum(start(input));
    }
}
