package thalweg.rig;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Between which shares friction may hold a sliding master: never farther apart than the capstan equation allows. */
class FrictionTest {

    private static RigDraft stiff(List<PointDraft> points, double friction) {
        return Rigs.focused(points, Vector3.ZERO, 1e-4, 0, 0)
                .withRig(SetupDraft.of(RigKind.SLIDING, 0, 0, 0, 100_000).withSliding(true, friction));
    }

    private static FrictionRange range(RigDraft draft) {
        return Rigs.answer(draft).friction().orElseThrow();
    }

    private static double ratio(ShareRange range) {
        return range.most() / (1 - range.most());
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 0.05, 0.2, 0.5, 2})
    void theRatioOfTheTensionsIsThatOfTheCapstanEquationWhereTheMasterRests(double friction) {
        RandomRigs.some(RigKind.SLIDING, 55, 120)
                .filter(input -> input.points().size() == 2)
                .map(input -> Rigs.input(
                        RigDraft.of(input).withRig(RigDraft.of(input).rig().withSliding(true, friction))))
                .forEach(input -> {
                    FrictionRange range = FindFriction.of(input);
                    double share = Rigs.steady(input).points().get(0).share();
                    ShareRange first = range.shares().get(0);
                    ShareRange second = range.shares().get(1);

                    assertThat(first.least()).isLessThanOrEqualTo(share + 1e-9);
                    assertThat(first.most()).isGreaterThanOrEqualTo(share - 1e-9);
                    assertThat(first.least() + second.most()).isCloseTo(1, within(1e-12));
                    assertThat(Math.log(ratio(first))).isLessThanOrEqualTo(friction * Math.PI + 1e-6);
                    assertThat(Math.log(ratio(second))).isLessThanOrEqualTo(friction * Math.PI + 1e-6);
                });
    }

    @Test
    void theEndsOfTheRangeAreThoseOfTheStatedEquations() {
        // Written apart: with s of unloaded strand on A's side, both sides tied, ln(tA/tB) = mu beta.
        RigInput input = Rigs.input(Rigs.pair(70)
                .withLoad(LoadDraft.ofForce(1.3, 12, 0))
                .withRig(SetupDraft.of(RigKind.SLIDING, 0.05, -0.1, 0.02, 55).withSliding(true, 0.3)));
        double share = FindFriction.of(input).shares().get(0).most();

        double low = 0.2;
        double high = FrictionByHand.unloaded(input) - 0.2;
        for (int i = 0; i < 60; i++) {
            double middle = (low + high) / 2;
            if (FrictionByHand.at(input, middle).logOfRatio()
                    > 0.3 * FrictionByHand.at(input, middle).turn()) {
                low = middle;
            } else {
                high = middle;
            }
        }

        assertThat(share).isCloseTo(FrictionByHand.at(input, low).share(), within(1e-6));
    }

    @Test
    void withoutFrictionTheRangeIsOneShare() {
        ShareRange range = range(stiff(List.of(PointDraft.of("A", -1, 1, 0), PointDraft.of("B", 1, 1, 0)), 0))
                .shares()
                .get(0);

        assertThat(range.least()).isEqualTo(range.most());
    }

    /** Both sides pull nearly along one line, so their tensions can hardly differ, wherever friction holds the master. */
    @Test
    void aFlatLoopHasHardlyAnyRange() {
        RigDraft flat = Rigs.pair(180)
                .withLoad(LoadDraft.ofForce(1e-4, 0, 0))
                .withRig(SetupDraft.of(RigKind.SLIDING, 0, 0, 0, 100_000).withSliding(true, 0.2));

        ShareRange range = range(flat).shares().get(0);

        assertThat(range.least()).isBetween(0.45, 0.5);
        assertThat(range.most()).isBetween(0.5, 0.55);
    }

    @Test
    void threePointsAreUnknownWithAReason() {
        RigDraft three = stiff(
                List.of(PointDraft.of("A", -1, 1, 0), PointDraft.of("B", 1, 1, 0), PointDraft.of("C", 0, 1.3, 0)), 0.2);

        assertThat(range(three).known()).isFalse();
        assertThat(range(three).why()).contains("three or more points").contains("unknown");
        assertThat(Rigs.answer(three).checks().get(0).verdict()).isEqualTo(RigVerdict.UNKNOWN);
    }

    @Test
    void sharesThatFrictionMayShiftAreJudgedByTheRange() {
        LetterCheck smooth = Rigs.answer(Rigs.pair(60)
                        .withRig(SetupDraft.of(RigKind.SLIDING, 0, 0, 0, 70).withSliding(true, 0.05)))
                .checks()
                .get(0);
        LetterCheck rough = Rigs.answer(Rigs.pair(60)
                        .withRig(SetupDraft.of(RigKind.SLIDING, 0, 0, 0, 70).withSliding(true, 0.3)))
                .checks()
                .get(0);

        assertThat(smooth.verdict()).isEqualTo(RigVerdict.GOOD);
        assertThat(rough.verdict()).isEqualTo(RigVerdict.WATCH);
        assertThat(rough.why()).contains("Friction at the master may hold it").contains("A 3");
    }

    @Test
    void onePointBearsEverythingWhateverTheFriction() {
        assertThat(range(stiff(List.of(PointDraft.of("A", 0, 1, 0)), 0.2)).shares())
                .containsExactly(new ShareRange("A", 1, 1));
    }

    @Test
    void otherKindsHaveNoRange() {
        assertThat(Rigs.answer(Rigs.pair(60)).friction()).isEmpty();
    }
}
