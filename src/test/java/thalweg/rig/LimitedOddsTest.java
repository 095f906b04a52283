package thalweg.rig;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import org.hipparchus.special.Erf;
import org.junit.jupiter.api.Test;

/** Safety ratios, odds, best focus and material of a rig whose master slides between limiter knots. */
class LimitedOddsTest {

    private static final double LOAD = 0.9;

    private static PointDraft point(String name, double x) {
        return new PointDraft(
                name, List.of(x, 0.0, 0.0), OptionalDouble.of(1.1), OptionalDouble.of(0.3), Optional.empty());
    }

    /** Legs of 0.5 m to the focus from points 0.6 m apart, limited at 0.1 m. */
    private static RigInput limited(int sliderStrands) {
        SetupDraft rig = SetupDraft.of(RigKind.LIMITED, 0, -0.4, 0, 70)
                .withStrength(10, 0.5)
                .withLimits(
                        new LimitDraft(
                                Optional.of(List.of(0.1, 0.1)), Optional.empty(), OptionalLong.of(sliderStrands)),
                        0.2);
        return Rigs.input(
                new RigDraft("", List.of(point("A", -0.3), point("B", 0.3)), LoadDraft.ofForce(LOAD, 0, 5), rig));
    }

    private static PartSafety part(RigAnswer answer, String name) {
        return answer.safety().stream()
                .filter(part -> part.part().equals(name))
                .findFirst()
                .orElseThrow();
    }

    /**
     * Between the limits the slider pulls evenly, as in a V: half the load over the cosine, on legs of two strands. What
     * friction may add is a factor on it all.
     */
    @Test
    void legsAndSliderHaveTheRatiosOfTheV() {
        RigAnswer answer = Analyze.of(limited(1));
        double force = answer.hardest("A").inKilonewtons();

        assertThat(force / answer.sector().worstOf("A").force().inKilonewtons())
                .isCloseTo(
                        answer.friction().orElseThrow().shares().get(0).most()
                                / answer.steady().at("A").share(),
                        within(1e-9));
        assertThat(part(answer, "A leg").steady().ratio().orElseThrow()).isCloseTo(2 * 10 * 0.5 / force, within(1e-6));
        assertThat(part(answer, "slider").steady().ratio().orElseThrow()).isCloseTo(10 * 0.5 / force, within(0.02));
        assertThat(part(answer, "slider").afterLoss().ratio().orElseThrow())
                .isCloseTo(part(answer, "A leg").afterLoss().ratio().orElseThrow() / 2, within(1e-3));
    }

    @Test
    void aCascadeOfItMeetsTheClosedFormOfTwoLikePoints() {
        RigDraft still = RigDraft.of(limited(2))
                .withLoad(new LoadDraft(
                        OptionalDouble.empty(),
                        OptionalDouble.of(LOAD),
                        OptionalDouble.of(0),
                        OptionalDouble.of(0),
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        OptionalDouble.of(0)));
        RigAnswer answer = Rigs.answer(still);
        double atRest = answer.steady().at("A").force().inKilonewtons();
        double atPeak = answer.losses()
                .get(1)
                .aftermath()
                .orElseThrow()
                .peaks()
                .orElseThrow()
                .on("A")
                .orElseThrow()
                .inKilonewtons();
        double f = below(atRest);
        double p = below(atPeak);

        CascadeOdds odds = Cascade.of(Rigs.input(still), 40_000, 2, (done, planned) -> true);

        Share95 any = odds.anyPointFails().orElseThrow();
        Share95 all = odds.everythingLost().orElseThrow();
        assertThat(1 - Math.pow(1 - f, 2)).isBetween(any.low(), any.high());
        assertThat(2 * f * p - f * f).isBetween(all.low(), all.high());
    }

    /** The share of strengths below a force. */
    private static double below(double force) {
        return Erf.erfc(-Math.log(force / 1.1) / 0.3 / Math.sqrt(2)) / 2;
    }

    @Test
    void theFocusDoesNotShareItsLoad() {
        BestFocus best = FindBestFocus.of(limited(1));

        assertThat(best.found()).isEmpty();
        assertThat(best.why()).contains("between the limits");
    }

    /** Two legs of 0.4 m of two strands, a slider of 0.2 m, four passes of a limiter knot, one ring bend. */
    @Test
    void itsKnotsTakeLengthToo() {
        double expected = 4 * 0.4 + 0.2 + 4 * TakeUp.LIMITER_KNOT_METRES + TakeUp.ringBend();

        assertThat(Analyze.of(limited(1)).material().total().metres()).isCloseTo(expected, within(1e-9));
        assertThat(Analyze.of(limited(2)).material().total().metres()).isCloseTo(expected + 0.2, within(1e-9));
    }
}
