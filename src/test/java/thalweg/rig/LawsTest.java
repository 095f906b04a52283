package thalweg.rig;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import thalweg.units.Angle;
import thalweg.units.Force;
import thalweg.units.Length;

/** Laws of statics that every answer keeps. Those without a source named are derived from plain mechanics. */
class LawsTest {

    static Stream<RigInput> rigs() {
        return RandomRigs.some(4_711, 100);
    }

    static Stream<RigInput> rigsOfEachKind() {
        return RandomRigs.ofEachKind(4_712, 60);
    }

    /**
     * 0 lies in the subdifferential of the energy: every strand pulls as its own stretch says, none pushes, and at the
     * master the pulls balance the load.
     */
    @ParameterizedTest
    @MethodSource("rigs")
    void theEnergyHasNoSlopeAtTheAnswer(RigInput input) {
        RigState steady = Rigs.steady(input);
        double weight = input.load().weight().inKilonewtons();
        Vector3 left = input.load().direction(input.load().toward()).times(weight);
        for (int i = 0; i < input.points().size(); i++) {
            Vector3 at = input.points().get(i).at();
            double unloaded = at.distance(input.rig().focus())
                    + input.rig().slack().get(i).metres();
            double strain = at.distance(steady.master()) / unloaded - 1;
            double tension = input.rig().stiffness().inKilonewtons() * Math.max(0, strain);
            Vector3 up = at.minus(steady.master()).times(1 / at.distance(steady.master()));
            left = left.plus(up.times(input.rig().strands() * tension));
            assertThat(steady.strands().get(i).tension().inKilonewtons()).isCloseTo(tension, within(1e-9 * weight));
        }
        assertThat(left.length()).isLessThan(1e-9 * weight);
    }

    @ParameterizedTest
    @MethodSource("rigsOfEachKind")
    void thePullsOnThePointsAddUpToTheLoadAndTheSharesToOne(RigInput input) {
        for (RigState state : Analyze.of(input).sector().directions()) {
            Vector3 sum = state.points().stream().map(PointForce::pull).reduce(Vector3.ZERO, Vector3::plus);
            double weight = input.load().weight().inKilonewtons();
            Vector3 load = input.load().direction(state.direction()).times(weight);

            assertThat(sum.minus(load).length()).isLessThan(1e-9 * weight);
            assertThat(state.points().stream().mapToDouble(PointForce::share).sum())
                    .isCloseTo(1, within(1e-12));
        }
    }

    @ParameterizedTest
    @MethodSource("rigsOfEachKind")
    void aMirrorChangesNothingButTheSide(RigInput input) {
        RigSetup rig = input.rig();
        RigInput mirrored = changed(
                input, LawsTest::mirrored, new Angle(-input.load().toward().degrees()), rig.stiffness());

        assertSameForces(Rigs.steady(input), Rigs.steady(mirrored), 1);
        assertThat(Rigs.steady(mirrored).master().x())
                .isCloseTo(-Rigs.steady(input).master().x(), within(1e-7));
    }

    /** About the vertical, for a load straight down, all horizontal directions are alike. */
    @ParameterizedTest
    @MethodSource("rigsOfEachKind")
    void aTurnAboutTheLoadChangesNoForce(RigInput input) {
        RigInput down = hangingDown(input);
        RigInput turned =
                changed(down, LawsTest::turned, new Angle(0), down.rig().stiffness());

        assertSameForces(Rigs.steady(down), Rigs.steady(turned), 1);
    }

    @ParameterizedTest
    @MethodSource("rigsOfEachKind")
    void loadAndStiffnessGrowTogether(RigInput input) {
        RigLoad load = input.load();
        RigInput tripled = new RigInput(
                input.name(),
                input.points(),
                new RigLoad(
                        new Force(3 * load.weight().newtons()),
                        Optional.empty(),
                        load.toward(),
                        load.sway(),
                        load.leanOut(),
                        load.ropeOut(),
                        load.ropeStiffness(),
                        load.spread()),
                withStiffness(
                        input.rig(),
                        new Force(3 * input.rig().stiffness().newtons()),
                        input.rig().focus()),
                input.assumed());

        assertSameForces(Rigs.steady(input), Rigs.steady(tripled), 3);
    }

    @Test
    void aSlackBackUpBearsNothingUntilTheLoadTurnsToIt() {
        RigDraft draft = Rigs.focused(
                List.of(PointDraft.of("bolt", 0, 0, 0), PointDraft.of("pine", -0.5, 0.3, 0)),
                new Vector3(0, -0.6, 0),
                0.9,
                0,
                60);
        RigAnswer answer = Rigs.answer(draft.withRig(draft.rig().withSlack(Map.of("pine", 0.05))));

        assertThat(answer.steady().at("pine").share()).isZero();
        assertThat(answer.steady().at("bolt").share()).isEqualTo(1);
        assertThat(answer.steady().angle()).isEmpty();
        assertThat(answer.sector().worstOf("pine").force().inKilonewtons()).isGreaterThan(0.1);
        assertThat(answer.sector().worstOf("pine").direction().degrees()).isPositive();
    }

    private static void assertSameForces(RigState one, RigState other, double factor) {
        double sum = one.points().stream()
                .mapToDouble(point -> point.force().newtons())
                .sum();
        for (int i = 0; i < one.points().size(); i++) {
            assertThat(other.points().get(i).force().newtons())
                    .isCloseTo(factor * one.points().get(i).force().newtons(), within(factor * sum * 1e-8));
        }
    }

    private static Vector3 mirrored(Vector3 place) {
        return new Vector3(-place.x(), place.y(), place.z());
    }

    private static Vector3 turned(Vector3 place) {
        double c = Math.cos(1.1);
        double s = Math.sin(1.1);
        return new Vector3(c * place.x() - s * place.z(), place.y(), s * place.x() + c * place.z());
    }

    private static RigInput hangingDown(RigInput input) {
        RigLoad load = input.load();
        RigLoad down = new RigLoad(
                load.weight(),
                load.mass(),
                new Angle(0),
                new Angle(0),
                new Angle(0),
                new Length(0),
                Optional.empty(),
                load.spread());
        return new RigInput(input.name(), input.points(), down, input.rig(), input.assumed());
    }

    private static RigSetup withStiffness(RigSetup rig, Force stiffness, Vector3 focus) {
        return new RigSetup(
                rig.kind(),
                focus,
                stiffness,
                rig.strands(),
                rig.slack(),
                rig.sliding(),
                rig.limiters(),
                rig.strandStrength(),
                rig.knotEfficiency(),
                rig.traits());
    }

    private static RigInput changed(RigInput input, UnaryOperator<Vector3> move, Angle toward, Force stiffness) {
        RigLoad load = input.load();
        return new RigInput(
                input.name(),
                input.points().stream()
                        .map(point -> new RigPoint(
                                point.name(),
                                move.apply(point.at()),
                                point.strength(),
                                point.spread(),
                                point.holdsAlone()))
                        .toList(),
                new RigLoad(
                        load.weight(),
                        load.mass(),
                        toward,
                        load.sway(),
                        load.leanOut(),
                        load.ropeOut(),
                        load.ropeStiffness(),
                        load.spread()),
                withStiffness(input.rig(), stiffness, move.apply(input.rig().focus())),
                input.assumed());
    }
}
