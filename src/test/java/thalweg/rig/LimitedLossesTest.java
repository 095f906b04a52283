package thalweg.rig;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import thalweg.units.Force;
import thalweg.units.Length;

/** What happens to a limited rig when a point lets go or a strand is cut. */
class LimitedLossesTest {

    private static final double EA = 70;

    /** One point above the other, the focus 0.4 m and 0.9 m below them; limits so that no knot is at the master. */
    private static RigDraft stack(int strands, int sliderStrands, double kilonewtons) {
        SetupDraft rig = SetupDraft.of(RigKind.LIMITED, 0, -0.4, 0, EA)
                .withLimits(LimitDraft.at(0.1, 0.15).withStrands(sliderStrands), 0.2)
                .withStrands(strands);
        return Rigs.focused(
                        List.of(PointDraft.of("low", 0, 0, 0), PointDraft.of("high", 0, 0.5, 0)),
                        new Vector3(0, -0.4, 0),
                        kilonewtons,
                        0,
                        0)
                .withRig(rig);
    }

    private static Aftermath loss(RigInput input, String point) {
        return Analyze.of(input).losses().stream()
                .filter(loss -> loss.point().equals(point))
                .findFirst()
                .flatMap(PointLoss::aftermath)
                .orElseThrow();
    }

    private static double peak(Aftermath after, String point) {
        return after.peaks().orElseThrow().on(point).orElseThrow().inKilonewtons();
    }

    /** The leg that is left and the slider hang as one: so long, so soft, and the fall is what the lost side gave free. */
    @ParameterizedTest
    @CsvSource({"2, 1, 0.9", "2, 2, 0.9", "1, 2, 3", "3, 1, 0.2"})
    void theLegThatIsLeftAndTheSliderActAsOneLength(int strands, int sliderStrands, double weight) {
        RigInput input = Rigs.input(stack(strands, sliderStrands, weight));
        double before = Rigs.steady(input).master().y();
        Aftermath after = loss(input, "high");

        double leg = 0.4 - 0.1;
        double slider = 0.25;
        double spring = 1 / (leg / (strands * EA) + slider / (sliderStrands * EA));
        double fall = before + leg + slider;
        assertThat(after.freeTravel().metres()).isCloseTo(fall, within(1e-9));
        assertThat(after.drop().metres()).isCloseTo(fall + weight / spring, within(1e-9));
        assertThat(after.swing().metres()).isCloseTo(0, within(1e-9));
        double exact = weight * (1 + Math.sqrt(1 + 2 * spring * fall / weight));
        assertThat(peak(after, "low")).isCloseTo(exact, within(2e-4 * exact));
    }

    /** One force runs through both, in as many parallel strands as each of them has. */
    @Test
    void theLegAndTheSliderBearThePeakInTheirOwnStrands() {
        Aftermath after = loss(Rigs.input(stack(2, 1, 0.9)), "high");
        double peak = peak(after, "low");

        assertThat(after.peaks().orElseThrow().strands())
                .extracting(PeakForces.InStrand::label)
                .containsExactly("low leg", "slider");
        assertThat(after.peaks().orElseThrow().strands())
                .extracting(strand -> strand.tension().inKilonewtons())
                .satisfiesExactly(
                        leg -> assertThat(leg).isCloseTo(peak / 2, within(1e-3 * peak)),
                        slider -> assertThat(slider).isCloseTo(peak, within(1e-3 * peak)));
    }

    @Test
    void aSliderOfOneStrandIsTheWeakestPartAndIsNamed() {
        RigDraft draft = stack(2, 1, 0.9);
        List<PointDraft> strong = draft.points().stream()
                .map(point -> new PointDraft(
                        point.name(), point.at(), OptionalDouble.of(50), OptionalDouble.empty(), Optional.of(true)))
                .toList();
        RigDraft stated = draft.withPoints(strong).withRig(draft.rig().withStrength(20, 0.6));

        assertThat(loss(Rigs.input(stated), "high").within().why()).contains("the slider");
    }

    @Test
    void whereItHangsAfterwardsTheKnotThatIsLeftHangsToo() {
        RigInput input = Rigs.input(stack(2, 1, 0.9));
        RigState rest = loss(input, "high").rest();

        assertThat(rest.knots()).singleElement().satisfies(knot -> {
            assertThat(knot.point()).isEqualTo("low");
            assertThat(knot.againstMaster()).isFalse();
            assertThat(knot.at().y()).isCloseTo(-0.3 * (1 + 0.9 / (2 * EA)), within(1e-9));
        });
        assertThat(rest.strands()).extracting(StrandPull::label).containsExactly("low leg", "slider");
    }

    @Test
    void aCutOfALegIsTheLossOfItsPointAndTheSliderHoldsIfItHasTwoStrands() {
        assertThat(Rigs.answer(stack(2, 1, 0.9)).cuts())
                .containsExactly(
                        new StrandCut("low leg", true, Optional.of("low")),
                        new StrandCut("high leg", true, Optional.of("high")),
                        new StrandCut("slider", false, Optional.empty()));
        assertThat(Rigs.answer(stack(2, 2, 0.9)).cuts().get(2))
                .isEqualTo(new StrandCut("slider", true, Optional.empty()));
    }

    @Test
    void aSliderOfOneStrandMakesTheRigDependOnIt() {
        LetterCheck one = Rigs.answer(stack(2, 1, 0.9)).checks().get(2);
        LetterCheck two = Rigs.answer(stack(2, 2, 0.9)).checks().get(2);

        assertThat(one.verdict()).isEqualTo(RigVerdict.POOR);
        assertThat(one.why()).contains("One failure loses everything: a cut of the slider");
        assertThat(two.verdict()).isEqualTo(RigVerdict.UNKNOWN);
        assertThat(two.why()).contains("the cut of any one strand is held");
    }

    /** A rig with short limits drops by little more than they give free; a loop that slides drops by a whole side. */
    @Test
    void limitersShortenTheDropOfASlidingRig() {
        RigDraft limited = stack(2, 2, 0.9);
        RigDraft sliding = limited.withRig(SetupDraft.of(RigKind.SLIDING, 0, -0.4, 0, EA));

        assertThat(loss(Rigs.input(limited), "high").drop().metres()).isLessThan(0.2);
        assertThat(loss(Rigs.input(sliding), "high").drop().metres()).isGreaterThan(0.8);
    }

    /** {@code W (3 - 2 cos t + |cos t - 1/(2 cos t)|)}: nearly no slider, hardly any stretch, so a stiff V of two legs. */
    @ParameterizedTest
    @CsvSource({"20, 1.528", "45, 1.586"})
    void withShortLimitsAndStiffStrandsItPeaksAsAStiffV(double half, double factor) {
        RigDraft v = Rigs.pair(2 * half)
                .withRig(SetupDraft.of(RigKind.LIMITED, 0, 0, 0, 2_000)
                        .withLimits(LimitDraft.at(1e-7, 1e-7).withStrands(2), 0));

        assertThat(peak(loss(Rigs.input(v), "A"), "B")).isCloseTo(factor, within(0.01));
    }

    static Stream<RigInput> rigs() {
        return Stream.concat(
                RandomRigs.some(RigKind.LIMITED, 95, 25),
                RandomRigs.some(RigKind.LIMITED, 96, 10).map(LimitedLossesTest::onARope));
    }

    private static RigInput onARope(RigInput input) {
        RigLoad load = input.load();
        return new RigInput(
                input.name(),
                input.points(),
                new RigLoad(
                        load.weight(),
                        load.mass(),
                        load.toward(),
                        load.sway(),
                        load.leanOut(),
                        new Length(3),
                        Optional.of(Force.kilonewtons(40)),
                        load.spread()),
                input.rig(),
                input.assumed());
    }

    private static Motion.Peaks motion(RigInput input, Network left, double precision) {
        Vector3 down = input.load().direction(input.load().toward());
        return Motion.of(new HangingMass(left, input.load(), down), input.load(), 2, precision)
                .orElseThrow();
    }

    /**
     * A finer integration gives the same peaks. It keeps the energy to a millionth of what the load gives on a metre, and
     * the usual one to some ten-thousandths.
     */
    @ParameterizedTest
    @MethodSource("rigs")
    void aFinerIntegrationKeepsTheEnergyAndGivesTheSamePeaks(RigInput input) {
        double weight = input.load().weight().inKilonewtons();
        Vector3 from = Rigs.steady(input).master();
        for (int lost = 0; lost < 2; lost++) {
            Network left =
                    Splice.of(LayStrands.left(input, lost, from).orElseThrow()).network();
            Motion.Peaks usual = motion(input, left, Motion.PRECISION);
            Motion.Peaks fine = motion(input, left, Motion.PRECISION / 1000);

            assertThat(Math.abs(usual.drift())).as(input.toString()).isLessThan(5e-4 * weight);
            assertThat(Math.abs(fine.drift())).as(input.toString()).isLessThan(1e-6 * weight);
            double exact = fine.points()[1 - lost];
            assertThat(usual.points()[1 - lost]).as(input.toString()).isCloseTo(exact, within(0.01 * exact));
        }
    }

    /** The knot that is left as a free massless node, in equilibrium at every instant: another way to the same motion. */
    @Test
    void theMotionIsThatOfAKnotThatIsInEquilibriumAtEveryInstant() {
        for (RigInput input : RandomRigs.some(RigKind.LIMITED, 97, 12).toList()) {
            Network left =
                    LayStrands.left(input, 0, Rigs.steady(input).master()).orElseThrow();
            Splice spliced = Splice.of(left);
            Motion.Peaks one = motion(input, spliced.network(), Motion.PRECISION);
            Motion.Peaks other = motion(input, left, Motion.PRECISION);

            double[] tensions = spliced.tensions(one.strands());
            assertThat(one.points()[1]).isCloseTo(other.points()[1], within(0.005 * other.points()[1]));
            for (int i = 0; i < 2; i++) {
                assertThat(tensions[i]).isCloseTo(other.strands()[i], within(0.005 * other.strands()[i]));
            }
        }
    }

    /** Before and after, whatever the contact was: finite, in balance, never falling farther than it drops. */
    @Test
    void everyLossOfAnyRigHasItsFigures() {
        List<RigInput> inputs =
                new ArrayList<>(RandomRigs.some(RigKind.LIMITED, 98, 40).toList());
        for (RigInput input : inputs) {
            RigAnswer answer = Analyze.of(input);
            double weight = input.load().weight().inKilonewtons();
            Vector3 load = input.load().direction(input.load().toward()).times(weight);
            IntStream.range(0, 2).forEach(lost -> {
                Aftermath after = answer.losses().get(lost).aftermath().orElseThrow();
                Vector3 pull = after.rest().points().get(1 - lost).pull();
                assertThat(pull.minus(load).length()).isLessThan(1e-9 * weight);
                assertThat(after.rest().points().get(lost).force().newtons()).isZero();
                assertThat(after.freeTravel().metres())
                        .isBetween(0.0, Math.max(0, after.drop().metres()) + 1e-9);
                assertThat(peak(after, input.points().get(1 - lost).name())).isGreaterThanOrEqualTo(weight * 0.999);
            });
        }
    }
}
