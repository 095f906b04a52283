package thalweg.rig;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Rigs of one closed strand: the sliding loop and the triangle. */
class LoopsTest {

    /** A triangle of the angle a pulls like two legs of the angle 90 + a/2: derived from the two formulas. */
    @ParameterizedTest
    @ValueSource(doubles = {10, 60, 90, 130, 160})
    void aTrianglePullsLikeTwoLegsOfAMuchWiderAngle(double degrees) {
        double legs = Trials.partOfPair(RigKind.FOCUSED, 90 + degrees / 2);

        assertThat(Trials.partOfPair(RigKind.LOOP, degrees)).isCloseTo(legs, within(legs * 1e-4));
    }

    @ParameterizedTest
    @ValueSource(doubles = {10, 60, 120, 170})
    void aSlidingLoopUnderTheMiddlePullsLikeTwoLegs(double degrees) {
        double legs = Trials.partOfPair(RigKind.FOCUSED, degrees);

        assertThat(Trials.partOfPair(RigKind.SLIDING, degrees)).isCloseTo(legs, within(legs * 1e-4));
    }

    /** One tension all along the loop, two stretches of it on each point. */
    @Test
    void everyPointOfASlidingLoopIsPulledAlikeWhereverTheLoadPulls() {
        RandomRigs.some(RigKind.SLIDING, 8, 100).forEach(input -> {
            for (RigState state : Analyze.of(input).sector().directions()) {
                double tension = state.strands().get(0).tension().newtons();
                // A point into which the master has slid bears less, and there is no second one.
                assertThat(state.points()).allMatch(point -> point.force().newtons() <= 2 * tension * (1 + 1e-9));
                long alike = state.points().stream()
                        .filter(point -> Math.abs(point.force().newtons() - 2 * tension) < 1e-6 * tension)
                        .count();
                assertThat(alike).isGreaterThanOrEqualTo(state.points().size() - 1);
            }
        });
    }

    @Test
    void theMasterOfTwoPointsHangsWhereTheLoadHalvesItsAngle() {
        RandomRigs.some(RigKind.SLIDING, 9, 300)
                .filter(input -> input.points().size() == 2)
                .forEach(input -> {
                    RigState steady = Rigs.steady(input);
                    Vector3 up = input.load().direction(input.load().toward()).times(-1);
                    Vector3 toOne = input.points().get(0).at().minus(steady.master());
                    Vector3 toOther = input.points().get(1).at().minus(steady.master());

                    assertThat(toOne.degreesTo(up)).isCloseTo(toOther.degreesTo(up), within(1e-4));
                });
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 20, -75})
    void aPointAboveAnotherSharesHalfAndHalf(double lean) {
        RigDraft stack = Rigs.focused(
                        List.of(PointDraft.of("low", 0, 0, 0), PointDraft.of("high", 0, 0.5, 0)),
                        new Vector3(0, -0.4, 0),
                        0.9,
                        0,
                        30)
                .withRig(SetupDraft.of(RigKind.SLIDING, 0, -0.4, 0, 70));

        RigState steady =
                Rigs.answer(stack.withLoad(stack.load().withLeanOut(lean))).steady();

        assertThat(steady.at("low").share()).isCloseTo(0.5, within(1e-9));
        assertThat(steady.at("high").share()).isCloseTo(0.5, within(1e-9));
    }

    @Test
    void oneStretchHasOneDirectionHoweverOftenTheLoopPassesIt() {
        RigDraft single = Rigs.focused(List.of(PointDraft.of("tree", 0, 1, 0)), Vector3.ZERO, 0.9, 10, 5)
                .withRig(SetupDraft.of(RigKind.SLIDING, 0, 0, 0, 70));

        assertThat(Rigs.answer(single).steady().angle()).isEmpty();
    }

    @Test
    void aLoadAlongTheLineOfTwoPointsHangsBeyondTheLastOne() {
        RigState steady = Rigs.answer(Rigs.pair(90)
                        .withLoad(LoadDraft.ofForce(1, 90, 0))
                        .withRig(SetupDraft.of(RigKind.SLIDING, 0, 0, 0, 70)))
                .steady();

        double height = Math.cos(Math.toRadians(45));
        assertThat(steady.master().y()).isCloseTo(height, within(1e-6));
        assertThat(steady.master().x()).isGreaterThan(Math.sin(Math.toRadians(45)));
        assertThat(steady.at("A").share()).isCloseTo(0.5, within(1e-9));
        assertThat(steady.angle().orElseThrow().degrees()).isCloseTo(0, within(1e-3));
    }
}
