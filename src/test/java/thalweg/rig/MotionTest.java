package thalweg.rig;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import thalweg.units.Angle;
import thalweg.units.Force;
import thalweg.units.Length;
import thalweg.units.Mass;

/** A mass that is let go on what is left of a network, against closed forms, tables, and its own energy. */
class MotionTest {

    private static final Vector3 DOWN = new Vector3(0, -1, 0);
    private static final Vector3 ABOVE = Vector3.ZERO;

    private static RigLoad load(double newtons) {
        return load(newtons, 0, 0);
    }

    private static RigLoad load(double newtons, double ropeOut, double ropeStiffness) {
        Angle none = new Angle(0);
        Optional<Force> stiffness = ropeOut > 0 ? Optional.of(Force.kilonewtons(ropeStiffness)) : Optional.empty();
        return new RigLoad(new Force(newtons), Optional.empty(), none, none, none, new Length(ropeOut), stiffness, 0.2);
    }

    /** A mass below one leg that is unloaded at a height above the end of its reach. */
    private static Network falling(double height, double springNewtonsPerMetre, double unloaded) {
        double stiffness = springNewtonsPerMetre * unloaded / 1000;
        return new Network(
                List.of(ABOVE),
                List.of(new Vector3(0, height - unloaded, 0)),
                List.of(Strand.open("bar", List.of(0, 1), unloaded, stiffness, 1)));
    }

    private static Motion.Peaks peaks(Network network, RigLoad load, double precision) {
        return Motion.of(
                        new HangingMass(network, load, DOWN),
                        load,
                        network.fixed().size(),
                        precision)
                .orElseThrow();
    }

    private static double peak(Network network, RigLoad load) {
        return peaks(network, load, Motion.PRECISION).points()[0] * 1000;
    }

    /**
     * A fall below a rope: both springs in a row act as one, as in the equation F = mg + sqrt((mg)^2 + 2 m g k f) that
     * Goldstone gives, The Standard Equation for Impact Force.
     */
    @ParameterizedTest
    @CsvSource({"0, 2", "0.3, 2", "0.3, 12", "1, 5"})
    void aFallBelowARopePullsAsTheTwoSpringsInARow(double height, double ropeOut) {
        double weight = 900;
        double leg = 80_000;
        double rope = 40_000 / ropeOut;
        RigLoad load = load(weight, ropeOut, 40);
        double row = leg * rope / (leg + rope);
        // The rope was stretched by the load, and hangs by so much lower. What is massless gives that way at once.
        double fall = height - weight / rope;
        double exact = fall > 0
                ? weight + Math.sqrt(weight * weight + 2 * row * weight * fall)
                : weight + Math.abs(weight + row * fall);

        double newtons = peak(falling(height, leg, 1), load);

        assertThat(newtons).isCloseTo(exact, within(exact * 1e-4));
    }

    @Test
    void whatIsAtRestStaysAtRest() {
        Network leg = new Network(
                List.of(ABOVE), List.of(new Vector3(0, -1, 0)), List.of(Strand.open("leg", List.of(0, 1), 1, 70, 2)));
        Equilibrium rest = FindEquilibrium.of(leg, DOWN);

        assertThat(peak(rest.network(), load(1000))).isCloseTo(1000, within(1e-4));
        assertThat(peak(rest.network(), load(1000, 20, 40))).isCloseTo(1000, within(1e-3));
    }

    @Test
    void aMotionTooFastToFollowIsNoAnswer() {
        Network stiff = new Network(
                List.of(ABOVE),
                List.of(new Vector3(0, -0.002, 0)),
                List.of(Strand.open("leg", List.of(0, 1), 0.002, 100_000, 24)));

        RigLoad light = load(1e-3);
        assertThat(Motion.of(new HangingMass(stiff, light, DOWN), light, 1, Motion.PRECISION))
                .isEmpty();
    }

    @Test
    void theMassIsTheWeightOverGravity() {
        // A bounce of a mass m on a spring k takes 2 pi sqrt(m/k): after half of it the pull is the largest.
        double spring = Math.pow(Math.PI / 2, 2) * 100 / Mass.STANDARD_GRAVITY;

        assertThat(peaks(falling(0, spring * 1.02, 1), load(100), Motion.PRECISION)
                        .rising())
                .isFalse();
        assertThat(peaks(falling(0, spring * 0.98, 1), load(100), Motion.PRECISION)
                        .rising())
                .isTrue();
    }
}
