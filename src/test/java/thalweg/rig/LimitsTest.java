package thalweg.rig;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import thalweg.units.Angle;
import thalweg.units.Length;

/** Where limiter knots belong, as stated or as found, and what is refused. */
class LimitsTest {

    private static final RigDraft PAIR = Rigs.focused(
            List.of(PointDraft.of("A", -0.2, 0, 0), PointDraft.of("B", 0.25, 0.1, 0.05)),
            new Vector3(0, -0.5, 0),
            0.9,
            0,
            10);

    private static RigDraft with(LimitDraft limits) {
        return PAIR.withRig(SetupDraft.of(RigKind.LIMITED, 0, -0.5, 0, 70).withLimits(limits, 0.2));
    }

    private static List<Double> limits(RigDraft draft) {
        return Rigs.answer(draft).limits().orElseThrow().stream()
                .map(Length::metres)
                .toList();
    }

    private static RigState under(RigDraft draft, double degrees) {
        return new RestState(Rigs.input(draft)).under(new Angle(degrees));
    }

    /** How far the master is from the knot of a leg [m]. */
    private static double free(RigState state, int knot) {
        return state.knots().get(knot).at().distance(state.master());
    }

    private static void assertRefused(RigDraft draft, String key, String part) {
        CheckedRig checked = draft.check();
        assertThat(checked.input()).isEmpty();
        assertThat(checked.findings()).as(checked.findings().toString()).anySatisfy(finding -> {
            assertThat(finding.key()).isEqualTo(key);
            assertThat(finding.sentence()).contains(part);
        });
    }

    @Test
    void statedLimitsAreTheLimits() {
        assertThat(limits(with(LimitDraft.at(0.1, 0.07)))).containsExactly(0.1, 0.07);
    }

    /**
     * With two strands everywhere, the master comes just up to a knot at one end of the range, and to none inside. A knot
     * at the focus itself is where it is because none is tied farther up.
     */
    @ParameterizedTest
    @CsvSource({"-15, 15, 0.9", "-5, 30, 0.9", "3, 4, 0.9", "-40, -10, 4", "-20, 20, 0.05", "-60, 45, 0.3"})
    void aRangeFreesTheMasterAsFarAsItsEndsAndNoFarther(double from, double to, double weight) {
        RigDraft draft = with(LimitDraft.over(from, to).withStrands(2)).withLoad(LoadDraft.ofForce(weight, 0, 0));
        List<Double> found = limits(draft);

        for (int i = 1; i < 40; i++) {
            RigState state = under(draft, from + (to - from) * i / 40);
            assertThat(state.knots()).noneMatch(KnotPlace::againstMaster);
        }
        assertThat(found).anyMatch(limit -> limit > 0);
        for (int knot = 0; knot < 2; knot++) {
            if (found.get(knot) > 0) {
                boolean atTo = free(under(draft, to), knot) < free(under(draft, from), knot);
                assertThat(free(under(draft, atTo ? to : from), knot)).isLessThan(1e-9);
                assertThat(under(draft, atTo ? to + 0.1 : from - 0.1)
                                .knots()
                                .get(knot)
                                .againstMaster())
                        .isTrue();
            }
        }
    }

    /** By hand: on a stiff loop the master is on an ellipse of which both points are foci. */
    @Test
    void theLimitsOfAStiffLevelPairAreThoseOfItsEllipse() {
        RigDraft draft = Rigs.focused(
                        List.of(PointDraft.of("A", -0.3, 0, 0), PointDraft.of("B", 0.3, 0, 0)),
                        new Vector3(0, -0.4, 0),
                        1e-4,
                        0,
                        0)
                .withRig(SetupDraft.of(RigKind.LIMITED, 0, -0.4, 0, 100_000).withLimits(LimitDraft.over(-20, 20), 0));
        // Half axes 0.5 and 0.4. The load pulls across the ellipse at the master, so the master's x is
        // a^2 tan / sqrt(b^2 + a^2 tan^2), and its distance from a focus a - e x with e = c / a = 0.6.
        double tan = Math.tan(Math.toRadians(20));
        double x = 0.25 * tan / Math.sqrt(0.16 + 0.25 * tan * tan);

        assertThat(limits(draft)).allSatisfy(limit -> assertThat(limit).isCloseTo(0.6 * x, within(1e-6)));
    }

    @Test
    void aMirroredRangeGivesMirroredLimits() {
        List<Double> one = limits(with(LimitDraft.over(-10, 25)));
        RigDraft draft = with(LimitDraft.over(-25, 10));
        List<Double> other =
                limits(draft.withPoints(List.of(PointDraft.of("B", -0.25, 0.1, 0.05), PointDraft.of("A", 0.2, 0, 0))));

        assertThat(one.get(0)).isCloseTo(other.get(1), within(1e-9));
        assertThat(one.get(1)).isCloseTo(other.get(0), within(1e-9));
    }

    @Test
    void aWiderRangeNeverGivesShorterLimits() {
        RandomRigs.some(RigKind.LIMITED, 61, 80).forEach(input -> {
            RigDraft draft = RigDraft.of(input);
            double toward = input.load().toward().degrees();
            List<Double> before = List.of(0.0, 0.0);
            for (double wide : new double[] {2, 10, 25}) {
                SetupDraft rig = draft.rig().withLimits(LimitDraft.over(toward - wide, toward + wide), 0.1);
                Optional<RigInput> wider = draft.withRig(rig).check().input();
                if (wider.isPresent()) {
                    List<Length> now =
                            wider.get().rig().limiters().orElseThrow().fromFocus();
                    for (int i = 0; i < 2; i++) {
                        assertThat(now.get(i).metres()).isGreaterThanOrEqualTo(before.get(i) - 1e-12);
                    }
                    before = now.stream().map(Length::metres).toList();
                }
            }
        });
    }

    @Test
    void aDraftIsGivenBackAsItWasStated() {
        for (LimitDraft limits : List.of(
                LimitDraft.at(0.1, 0.07),
                LimitDraft.over(-10, 20),
                LimitDraft.over(-10, 20).withStrands(2))) {
            RigDraft draft = with(limits);
            assertThat(RigDraft.of(Rigs.input(draft))).isEqualTo(draft);
            assertThat(Rigs.input(RigDraft.of(Rigs.input(draft)))).isEqualTo(Rigs.input(draft));
        }
    }

    @Test
    void whatIsNotStatedIsAssumedAndSaid() {
        SetupDraft bare = SetupDraft.of(RigKind.LIMITED, 0, -0.5, 0, 70);
        SetupDraft limited = new SetupDraft(
                bare.kind(),
                bare.focus(),
                bare.stiffnessKilonewtons(),
                bare.strands(),
                bare.slackMetres(),
                bare.captured(),
                bare.friction(),
                LimitDraft.at(0.1, 0.1),
                bare.strandKilonewtons(),
                bare.knotEfficiency());
        RigInput input = Rigs.input(PAIR.withRig(limited));

        assertThat(input.assumed())
                .contains("strands", "slider_strands", "friction")
                .doesNotContain("captured");
        Limiters limiters = input.rig().limiters().orElseThrow();
        assertThat(limiters.sliderStrands()).isEqualTo(1);
        assertThat(limiters.friction()).isEqualTo(0.2);
    }

    @Test
    void bothOrNeitherOfLimitsAndRangeIsRefused() {
        assertRefused(with(LimitDraft.NONE), "rig", "neither limit_m nor limit_range_deg");
        assertRefused(
                with(new LimitDraft(
                        Optional.of(List.of(0.1, 0.1)), Optional.of(List.of(-5.0, 5.0)), OptionalLong.empty())),
                "rig",
                "both limit_m and limit_range_deg");
    }

    @ParameterizedTest
    @CsvSource({
        "0, 0.1, is 0 m for point A; it must be above 0 and below the 0.539 m from the focus to the point",
        "0.1, 0, is 0 m for point B",
        "0.539, 0.1, is 0.539 m for point A",
        "0.1, 3, is 3 m for point B; it must be above 0 and below the 0.652 m",
        "-0.1, 0.1, cannot be negative",
        "0.1, NaN, finite",
        "Infinity, 0.1, finite",
    })
    void limitsThatAreNotBetweenTheFocusAndTheirPointAreRefused(double first, double second, String reason) {
        assertRefused(with(LimitDraft.at(first, second)), "rig.limit_m", reason);
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 3})
    void limitsAreTwo(int count) {
        List<Double> many = List.of(0.1, 0.1, 0.1).subList(0, count);
        assertRefused(
                with(new LimitDraft(Optional.of(many), Optional.empty(), OptionalLong.empty())),
                "rig.limit_m",
                "has " + count + " number");
        assertRefused(
                with(new LimitDraft(Optional.empty(), Optional.of(many), OptionalLong.empty())),
                "rig.limit_range_deg",
                "it takes two directions");
    }

    @ParameterizedTest
    @CsvSource({
        "20, 10, goes from 20° to 10°",
        "-200, 10, at least -180",
        "0, 181, at most 180",
        "NaN, 10, finite",
    })
    void rangesThatCannotBeAreRefused(double from, double to, String reason) {
        assertRefused(with(LimitDraft.over(from, to)), "rig.limit_range_deg", reason);
    }

    /** A flat loop has no way to spare, so the master slides along it to the points. */
    @Test
    void aRangeThatLeavesNoLegIsRefused() {
        RigDraft flat = Rigs.pair(180)
                .withLoad(LoadDraft.ofForce(1e-4, 0, 0))
                .withRig(SetupDraft.of(RigKind.LIMITED, 0, 0, 0, 100_000).withLimits(LimitDraft.over(-90, 90), 0.2));

        assertRefused(flat, "rig.limit_range_deg", "slide up to point A");
        assertRefused(flat, "rig.limit_range_deg", "slide up to point B");
    }

    @Test
    void aRangeThatAsksForNoSlidingIsRefused() {
        RigDraft level = Rigs.pair(60)
                .withRig(SetupDraft.of(RigKind.LIMITED, 0, 0, 0, 70).withLimits(LimitDraft.over(0, 0), 0.2));

        assertRefused(level, "rig.limit_range_deg", "less than 1 mm of sliding");
    }

    @ParameterizedTest
    @ValueSource(longs = {-1, 0, 3})
    void theSliderHasOneStrandOrTwo(long strands) {
        assertRefused(
                with(LimitDraft.at(0.1, 0.1).withStrands(strands)),
                "rig.slider_strands",
                "is " + strands + "; it must be 1 or 2");
    }

    @Test
    void keysOfLimitersBelongToTheLimitedKindAlone() {
        LimitDraft all =
                new LimitDraft(Optional.of(List.of(0.1, 0.1)), Optional.of(List.of(-5.0, 5.0)), OptionalLong.of(2));
        RigDraft focused = PAIR.withRig(PAIR.rig().withLimits(all, 0.2));

        assertRefused(focused, "rig.limit_m", "belongs to: limited");
        assertRefused(focused, "rig.limit_range_deg", "belongs to: limited");
        assertRefused(focused, "rig.slider_strands", "belongs to: limited");
        SetupDraft captured = with(LimitDraft.at(0.1, 0.1)).rig().withSliding(true, 0.2);
        assertRefused(PAIR.withRig(captured), "rig.captured", "belongs to: sliding");
    }
}
