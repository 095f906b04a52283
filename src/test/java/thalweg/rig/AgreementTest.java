package thalweg.rig;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

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
            RigState steady = Analyze.of(input).steady();
            EnergyByHand energy = energy(input);
            double[] rest = energy.minimum(start(input));
            double load = input.load().weight().inKilonewtons();

            assertThat(energy.slope(rest)).as("the other optimiser is at rest").isLessThan(1e-8 * load);
            for (int i = 0; i < input.points().size(); i++) {
                double theirs = energy.tension(i, rest);
                slack += theirs == 0 ? 1 : 0;
                assertThat(steady.points().get(i).force().inKilonewtons())
                        .as("%s, point %s", input, i)
                        .isCloseTo(theirs, within(PARTS_OF_LOAD * load));
            }
        }
        assertThat(slack).as("legs that hang slack are among them").isGreaterThan(100);
    }

    private static double[] start(RigInput input) {
        Vector3 focus = input.rig().focus();
        return new double[] {focus.x() + 1e-3, focus.y() - 1e-2, focus.z() + 1e-3};
    }

    private static EnergyByHand energy(RigInput input) {
        List<EnergyByHand.Cord> cords = new ArrayList<>();
        Vector3 focus = input.rig().focus();
        for (int i = 0; i < input.points().size(); i++) {
            Vector3 at = input.points().get(i).at();
            double dx = at.x() - focus.x();
            double dy = at.y() - focus.y();
            double dz = at.z() - focus.z();
            double rest = Math.sqrt(dx * dx + dy * dy + dz * dz)
                    + input.rig().slack().get(i).metres();
            double rate = input.rig().strands() * input.rig().stiffness().inKilonewtons() / rest;
            cords.add(new EnergyByHand.Cord(
                    List.of(new double[] {at.x(), at.y(), at.z()}, new double[] {0}), false, rest, rate));
        }
        double toward = input.load().toward().inRadians();
        double lean = input.load().leanOut().inRadians();
        double weight = input.load().weight().inKilonewtons();
        return new EnergyByHand(
                cords,
                1,
                List.of(
                        weight * Math.sin(toward) * Math.cos(lean),
                        -weight * Math.cos(toward) * Math.cos(lean),
                        weight * Math.sin(lean)));
    }
}
