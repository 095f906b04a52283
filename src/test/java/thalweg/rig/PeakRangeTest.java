package thalweg.rig;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import thalweg.units.Force;

/** Between what model peaks lie. */
class PeakRangeTest {

    private static final double LOAD = 0.9;

    private static PeakRange.OnPoint after(RigDraft draft, String lost, String on) {
        return FindPeakRange.of(Rigs.answer(draft)).losses().stream()
                .filter(loss -> loss.lost().equals(lost))
                .flatMap(loss -> loss.points().stream())
                .filter(point -> point.point().equals(on))
                .findFirst()
                .orElseThrow();
    }

    private static RigDraft pair(double halfWidth, double sway) {
        return Rigs.focused(
                List.of(PointDraft.of("A", -halfWidth, 0.5, 0), PointDraft.of("B", halfWidth, 0.5, 0)),
                Vector3.ZERO,
                LOAD,
                0,
                sway);
    }

    /** A fall by h onto a spring k: F = W (1 + sqrt(1 + 2 h k / W)); Gere, Mechanics of Materials, 2.8. */
    private static double fall(double height, double spring) {
        return LOAD * (1 + Math.sqrt(1 + 2 * height * spring / LOAD));
    }

    /**
     * Two legs side by side: without slack the loss of one peaks at 1.5 W; with 20 mm of slack the other is unloaded, and
     * the load falls onto it by the slack less what the first leg was stretched. Nylon webbing: 51, 70, 94 kN a strand.
     */
    @Test
    void twoLegsSideBySideGoFromOneAndAHalfTimesTheLoadToAFallOntoTheStiffest() {
        PeakRange.OnPoint range = after(pair(0.0015, 0), "A", "B");
        double stiffest = 2 * 94 / 0.52;
        double stretched = LOAD / (2 * 94 / 0.5);

        assertThat(range.low().inKilonewtons()).isCloseTo(1.5 * LOAD, within(0.02 * LOAD));
        assertThat(range.high().inKilonewtons()).isCloseTo(fall(0.02 - stretched, stiffest), within(0.02 * LOAD));
        assertThat(range.nominal().orElseThrow().inKilonewtons()).isCloseTo(1.5 * LOAD, within(0.02 * LOAD));
    }

    @Test
    void theNominalPeakLiesInItsRange() {
        RandomRigs.ofEachKind(17, 3).forEach(input -> {
            RigAnswer answer = Analyze.of(input);
            for (PeakRange.Loss loss : FindPeakRange.of(answer).losses()) {
                assertThat(loss.points()).isNotEmpty();
                for (PeakRange.OnPoint point : loss.points()) {
                    point.nominal().ifPresent(nominal -> assertThat(nominal).isBetween(point.low(), point.high()));
                }
            }
        });
    }

    /** Legs of two strands and a slider of one act as one strand after a loss; stiffer or softer, they still do. */
    @Test
    void aLimitedRigIsTriedWithTwiceAndWithHalfOfItsOwnStiffness() {
        PeakRange.OnPoint range = after(limited(60), "A", "B");

        assertThat(range.high().inKilonewtons()).isGreaterThanOrEqualTo(0.999 * Trials.peakOnB(limited(120)));
        assertThat(range.low().inKilonewtons()).isLessThanOrEqualTo(1.001 * Trials.peakOnB(limited(30)));
        assertThat(range.low().inKilonewtons()).isGreaterThan(0.9 * Trials.peakOnB(limited(30)));
    }

    private static RigDraft limited(double stiffness) {
        return pair(0.3, 0)
                .withRig(SetupDraft.of(RigKind.LIMITED, 0, 0, 0, stiffness).withLimits(LimitDraft.at(0.1, 0.1), 0.2));
    }

    @Test
    void theEndsOfTheSwayWidenIt() {
        PeakRange.OnPoint still = after(pair(0.3, 0), "A", "B");
        PeakRange.OnPoint swaying = after(pair(0.3, 20), "A", "B");

        assertThat(swaying.high()).isGreaterThan(still.high());
        assertThat(swaying.low()).isLessThanOrEqualTo(still.low());
    }

    /** After 30 m of soft rope the first bounce comes later than 2 s, which is why the nominal peaks still rise. */
    @Test
    void aLongRopeIsFollowedUntilItHasBounced() {
        RigDraft draft = pair(0.0015, 0);
        RigDraft roped = draft.withLoad(new LoadDraft(
                OptionalDouble.of(90),
                OptionalDouble.empty(),
                OptionalDouble.of(0),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.of(60),
                OptionalDouble.of(8),
                OptionalDouble.empty()));

        PeakRange range = FindPeakRange.of(Rigs.answer(roped));
        assertThat(Rigs.answer(roped).losses())
                .allMatch(loss ->
                        loss.aftermath().orElseThrow().peaks().orElseThrow().rising());

        assertThat(range.losses()).allSatisfy(loss -> {
            assertThat(loss.rising()).isFalse();
            assertThat(loss.complete()).isTrue();
        });
    }

    @Test
    void whatLosesEverythingHasNoRange() {
        RigDraft single = new RigDraft(
                "",
                List.of(PointDraft.of("tree", 0, 0, 0)),
                LoadDraft.ofForce(1, 0, 10),
                SetupDraft.of(RigKind.SINGLE, 0, -0.5, 0, 70));

        assertThat(FindPeakRange.of(Rigs.answer(single)).losses()).isEmpty();
    }

    @Test
    void aStiffnessThatIsInNoTableIsVariedByHalfAndTwice() {
        RigDraft draft = pair(0.0015, 0);
        RigDraft own = draft.withRig(SetupDraft.of(RigKind.FOCUSED, 0, 0, 0, 77));

        Force high = after(own, "A", "B").high();

        double stretched = LOAD / (2 * 154 / 0.5);
        assertThat(high.inKilonewtons()).isCloseTo(fall(0.02 - stretched, 2 * 154 / 0.52), within(0.02 * LOAD));
    }
}
