package thalweg.rig;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
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
     * A weight that falls on a spring: Gere, Mechanics of Materials, problem 2.8-4: 5.0 N, 200 mm, 90 N/m: 215 mm and a
     * factor of 3.9 (19.32 N).
     */
    @Test
    void aWeightThatFallsOnASpringPullsAsGeresProblemSays() {
        double newtons = peak(falling(0.2, 90, 1), load(5));

        assertThat(newtons / 5).isCloseTo(3.9, within(0.05));
        assertThat(newtons).isCloseTo(19.32, within(0.01));
        assertThat(newtons / 90).isCloseTo(0.215, within(0.0005));
    }

    /** Gere 2.8-5: 1.0 lb, 12 in, 0.5 lb/in: 9.21 in and a factor of 4.6. */
    @Test
    void aPoundThatFallsAFootPullsAsGeresProblemSays() {
        double pound = Force.NEWTONS_PER_POUND_FORCE;
        double inch = 0.0254;

        double newtons = peak(falling(12 * inch, 0.5 * pound / inch, 2), load(pound));

        assertThat(newtons / pound).isCloseTo(4.6, within(0.05));
        assertThat(newtons / (0.5 * pound)).isCloseTo(9.21, within(0.01));
    }

    /** Gere 2.8-1: 150 lb, 2.0 in, a steel bar of 48 in and 0.75 in²: 0.0361 in, 22,600 psi and a factor of 113. */
    @Test
    void aCollarThatFallsOnASteelBarPullsAsGeresProblemSays() {
        double pound = Force.NEWTONS_PER_POUND_FORCE;
        double inch = 0.0254;
        double spring = 30e6 * 0.75 / 48 * pound / inch;

        double newtons = peak(falling(2 * inch, spring, 48 * inch), load(150 * pound));

        assertThat(newtons / (150 * pound)).isCloseTo(113, within(0.5));
        assertThat(newtons / pound / 0.75).isCloseTo(22_600, within(50.0));
        assertThat(newtons / spring / inch).isCloseTo(0.0361, within(0.00005));
    }

    /** {@code W (1 + sqrt(1 + 2 k h / W))}, and twice the load where it does not fall at all. */
    @ParameterizedTest
    @ValueSource(doubles = {0, 0.001, 0.05, 0.4, 1.2})
    void aFallPullsAsTheEquationOfImpactSays(double height) {
        double weight = 900;
        double spring = 50_000;

        double newtons = peak(falling(height, spring, 1.5), load(weight));

        double exact = weight * (1 + Math.sqrt(1 + 2 * spring * height / weight));
        assertThat(newtons).isCloseTo(exact, within(exact * 2e-5));
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

    /** {@code W (3 - 2 cos t + |cos t - 1/(2 cos t)|)}: a stiff V of half angle t that loses one leg. */
    @ParameterizedTest
    @CsvSource({"20, 1.528", "45, 1.586", "5, 1.502", "60, 2.5"})
    void aStiffVThatLosesALegPeaksAsItsSwingAndItsBounceTogether(double degrees, double factor) {
        double t = Math.toRadians(degrees);
        double exact = 3 - 2 * Math.cos(t) + Math.abs(Math.cos(t) - 1 / (2 * Math.cos(t)));
        List<Vector3> points =
                List.of(new Vector3(Math.sin(t), Math.cos(t), 0), new Vector3(-Math.sin(t), Math.cos(t), 0));
        Strand first = Strand.open("first", List.of(0, 2), 1, 5_000, 1);
        Strand second = Strand.open("second", List.of(1, 2), 1, 5_000, 1);
        Network whole = new Network(points, List.of(Vector3.ZERO), List.of(first, second));
        Equilibrium rest = FindEquilibrium.of(whole, DOWN);

        Network left = new Network(points, List.of(rest.master()), List.of(first));
        double newtons = peak(left, load(1000));

        assertThat(exact).isCloseTo(factor, within(0.0005));
        assertThat(newtons / 1000).isCloseTo(exact, within(exact * 5e-3));
    }

    /** A long leg seen from the side: the time from rest to the lowest place is the quarter of a pendulum's. */
    @Test
    void aPendulumIsPulledHardestAtItsLowestPlace() {
        double t = Math.toRadians(30);
        Network side = new Network(
                List.of(ABOVE),
                List.of(new Vector3(Math.sin(t), -Math.cos(t), 0)),
                List.of(Strand.open("leg", List.of(0, 1), 1 - 1e-9, 2_000, 1)));

        // The leg is just taut and takes up m g cos t in one jerk of twice that; the swing alone gives 3 - 2 cos t.
        double newtons = peak(side, load(100));

        assertThat(newtons / 100).isCloseTo(3 - 2 * Math.cos(t) + Math.cos(t), within(0.01));
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
