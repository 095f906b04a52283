package thalweg.rig;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What happens when a point lets go: where the master goes, and how hard it is caught. */
class LossesTest {

    private static final OptionalDouble NONE = OptionalDouble.empty();

    private static final List<PointDraft> STACK =
            List.of(PointDraft.of("low", 0, 0, 0), PointDraft.of("high", 0, 0.5, 0));

    private static RigDraft rig(RigKind kind, List<PointDraft> points, Vector3 focus, double kilonewtons) {
        return Rigs.focused(points, focus, kilonewtons, 0, 0)
                .withRig(SetupDraft.of(kind, focus.x(), focus.y(), focus.z(), 70));
    }

    private static Aftermath loss(RigDraft draft, String point) {
        return loss(Rigs.input(draft), point);
    }

    private static Aftermath loss(RigInput input, String point) {
        return Analyze.of(input).losses().stream()
                .filter(loss -> loss.point().equals(point))
                .findFirst()
                .flatMap(PointLoss::aftermath)
                .orElseThrow();
    }

    private static double peak(Aftermath aftermath, String point) {
        return aftermath.peaks().orElseThrow().on(point).orElseThrow().inKilonewtons();
    }

    private static RigDraft onARope(RigDraft draft, double metres) {
        LoadDraft load = draft.load();
        return draft.withLoad(new LoadDraft(
                load.massKilograms(),
                load.forceKilonewtons(),
                load.towardDegrees(),
                load.swayDegrees(),
                load.leanOutDegrees(),
                OptionalDouble.of(metres),
                OptionalDouble.of(40),
                NONE));
    }

    static Stream<RigInput> rigs() {
        return Stream.concat(
                RandomRigs.ofEachKind(91, 12),
                RandomRigs.ofEachKind(92, 6).map(input -> Rigs.input(onARope(RigDraft.of(input), 3))));
    }

    /** Parallel legs share by their stiffness over length; the survivor peaks at twice the load less what it bore. */
    @Test
    void aLegThatBoreMorePeaksAtLess() {
        RigDraft stack = rig(RigKind.FOCUSED, STACK, new Vector3(0, -1, 0), 0.9);
        double bore = Rigs.steady(Rigs.input(stack)).at("low").force().inKilonewtons();

        assertThat(bore / 0.9).isCloseTo(0.6, within(1e-9));
        assertThat(peak(loss(stack, "high"), "low")).isCloseTo(2 * 0.9 - bore, within(1e-4));
    }

    @Test
    void theMasterOfAVComesToRestBelowTheOtherPoint() {
        RigDraft v = Rigs.pair(90);
        Vector3 before = Rigs.steady(Rigs.input(v)).master();
        Aftermath after = loss(v, "A");

        double half = Math.sin(Math.toRadians(45));
        double stretched = 1 + 1.0 / (2 * 70);
        assertThat(after.rest().master().distance(new Vector3(half, half - stretched, 0)))
                .isLessThan(1e-9);
        assertThat(after.drop().metres()).isCloseTo(before.y() - (half - stretched), within(1e-9));
        assertThat(after.swing().metres()).isCloseTo(half, within(1e-9));
        assertThat(after.freeTravel().metres()).isZero();
        assertThat(after.rest().at("B").force().inKilonewtons()).isCloseTo(1, within(1e-9));
        assertThat(after.rest().at("A").force().newtons()).isZero();
    }

    /** Below its points the loop of both ways is left on one of them, so the master falls by the other way. */
    @Test
    void aCapturedMasterFallsByTheLengthThatTheLostPointGivesFree() {
        RigDraft sliding = rig(RigKind.SLIDING, STACK, new Vector3(0, -0.4, 0), 0.9);
        double before = Rigs.steady(Rigs.input(sliding)).master().y();
        Aftermath after = loss(sliding, "high");

        double reach = 0.4 + 0.9;
        double spring = 4 * 70 / (2 * reach);
        double fall = reach + before;
        assertThat(after.freeTravel().metres()).isCloseTo(fall, within(1e-9));
        assertThat(after.drop().metres()).isCloseTo(fall + 0.9 / spring, within(1e-9));
        assertThat(after.swing().metres()).isCloseTo(0, within(1e-9));
        assertThat(peak(after, "low")).isCloseTo(0.9 * (1 + Math.sqrt(1 + 2 * spring * fall / 0.9)), within(2e-4));
    }

    @Test
    void aTriangleThatLosesAPointKeepsItsLengthOnTheOther() {
        RigDraft triangle = rig(
                RigKind.LOOP,
                List.of(PointDraft.of("A", -0.3, 0, 0), PointDraft.of("B", 0.3, 0, 0)),
                new Vector3(0, -0.4, 0),
                1);
        Aftermath after = loss(triangle, "A");

        double reach = (0.5 + 0.5 + 0.6) / 2;
        double spring = 4 * 70 / (2 * reach);
        assertThat(after.rest().master().distance(new Vector3(0.3, -reach - 1 / spring, 0)))
                .isLessThan(1e-9);
        assertThat(after.freeTravel().metres()).isPositive();
    }

    @Test
    void aSlackBackUpCatchesAfterItsSlack() {
        RigDraft backed = rig(RigKind.FOCUSED, STACK, new Vector3(0, -0.4, 0), 0.9);
        RigDraft slack = backed.withRig(backed.rig().withSlack(Map.of("high", 0.05)));
        double stretch = 0.9 / (2 * 70 / 0.4);

        assertThat(loss(slack, "low").freeTravel().metres()).isCloseTo(0.05 - stretch, within(1e-9));
        assertThat(loss(slack, "high").drop().metres()).isCloseTo(0, within(1e-9));
        assertThat(peak(loss(slack, "high"), "low")).isCloseTo(0.9, within(1e-3));
    }

    @Test
    void aMasterThatIsNotCapturedAndASinglePointLoseEverything() {
        RigDraft sliding = rig(RigKind.SLIDING, STACK, new Vector3(0, -0.4, 0), 0.9);
        RigAnswer released = Rigs.answer(sliding.withRig(sliding.rig().withSliding(false, 0.2)));
        RigAnswer single = Rigs.answer(rig(RigKind.SINGLE, STACK.subList(0, 1), new Vector3(0, -0.4, 0), 0.9));
        RigAnswer alone = Rigs.answer(rig(RigKind.SLIDING, STACK.subList(0, 1), new Vector3(0, -0.4, 0), 0.9));

        assertThat(released.losses()).extracting(PointLoss::held).containsExactly(false, false);
        assertThat(single.losses()).extracting(PointLoss::held).containsExactly(false);
        assertThat(alone.losses()).extracting(PointLoss::held).containsExactly(false);
    }

    @Test
    void aCutOfALegIsLikeTheLossOfItsPointAndACutOfALoopLosesEverything() {
        assertThat(Rigs.answer(Rigs.pair(60)).cuts())
                .containsExactly(
                        new StrandCut("A leg", true, Optional.of("A")), new StrandCut("B leg", true, Optional.of("B")));
        assertThat(Rigs.answer(rig(RigKind.SLIDING, STACK, new Vector3(0, -0.4, 0), 0.9))
                        .cuts())
                .containsExactly(new StrandCut("sliding loop", false, Optional.empty()));
        assertThat(Rigs.answer(rig(RigKind.LOOP, STACK, new Vector3(0.3, -0.4, 0), 0.9))
                        .cuts())
                .containsExactly(new StrandCut("triangle", false, Optional.empty()));
        assertThat(Rigs.answer(rig(RigKind.SINGLE, STACK.subList(0, 1), new Vector3(0, -0.4, 0), 0.9))
                        .cuts())
                .containsExactly(new StrandCut("low leg", false, Optional.of("low")));
    }

    @Test
    void aSingleSurvivorNeverPeaksAboveItsBound() {
        RandomRigs.ofEachKind(93, 40)
                .filter(input -> input.points().size() == 2)
                .forEach(input -> {
                    for (PointLoss lost : Analyze.of(input).losses()) {
                        int gone = input.points().get(0).name().equals(lost.point()) ? 0 : 1;
                        lost.aftermath()
                                .ifPresent(after -> assertThat(peak(after, other(input, lost)))
                                        .as("%s without %s", input, lost.point())
                                        .isLessThan(Trials.bound(input, gone) * (1 + 1e-4)));
                    }
                });
    }

    private static String other(RigInput input, PointLoss lost) {
        return input.points().stream()
                .map(RigPoint::name)
                .filter(name -> !name.equals(lost.point()))
                .findFirst()
                .orElseThrow();
    }

    /** Less than one part in a hundred apart from an integration a thousand times as fine, and energy is kept. */
    @ParameterizedTest
    @MethodSource("rigs")
    void aFinerIntegrationGivesTheSamePeaks(RigInput input) {
        Vector3 down = input.load().direction(input.load().toward());
        Vector3 master = Rigs.steady(input).master();
        List<Vector3> points = input.points().stream().map(RigPoint::at).toList();
        double weight = input.load().weight().inKilonewtons();
        for (int i = 0; i < points.size(); i++) {
            LayStrands.left(input, i, master).map(Splice::of).ifPresent(spliced -> {
                Network left = spliced.network();
                Motion.Peaks usual = Motion.of(
                                new HangingMass(left, input.load(), down),
                                input.load(),
                                points.size(),
                                Motion.PRECISION)
                        .orElseThrow();
                Motion.Peaks fine = Motion.of(
                                new HangingMass(left, input.load(), down),
                                input.load(),
                                points.size(),
                                Motion.PRECISION / 1000)
                        .orElseThrow();

                assertThat(Math.abs(usual.drift())).isLessThan(1e-3 * weight);
                assertThat(Math.abs(fine.drift())).isLessThan(1e-6 * weight);
                for (int point = 0; point < points.size(); point++) {
                    assertThat(usual.points()[point])
                            .as("%s, %s", input, point)
                            .isCloseTo(fine.points()[point], within(0.01 * Math.max(fine.points()[point], weight)));
                }
            });
        }
    }

    /** A rope and the one leg that is left lie in one line, so they act as one strand. */
    @ParameterizedTest
    @ValueSource(doubles = {0.5, 4, 25})
    void aRopeBelowOneLegActsAsOneLongerLeg(double ropeOut) {
        RigInput input = Rigs.input(onARope(Rigs.pair(80), ropeOut));
        Aftermath after = loss(input, "A");
        Vector3 from = Rigs.steady(input).master().plus(new Vector3(0, -ropeOut * (1 + 1.0 / 40), 0));
        double spring = 1 / (1 / (2 * 70.0) + ropeOut / 40);
        double unloaded = 1 + ropeOut;
        Network one = new Network(
                List.of(input.points().get(1).at()),
                List.of(from),
                List.of(Strand.open("both", List.of(0, 1), unloaded, spring * unloaded, 1)));
        RigLoad direct = Rigs.input(Rigs.pair(80)).load();

        Motion.Peaks peaks = Motion.of(new HangingMass(one, direct, new Vector3(0, -1, 0)), direct, 1, Motion.PRECISION)
                .orElseThrow();

        assertThat(peak(after, "B")).isCloseTo(peaks.points()[0], within(2e-3));
    }

    @ParameterizedTest
    @MethodSource("rigs")
    void everyFigureOfALossIsANumberAndTheRestIsLower(RigInput input) {
        RigAnswer answer = Analyze.of(input);
        double weight = input.load().weight().inKilonewtons();
        Vector3 load = input.load().direction(input.load().toward()).times(weight);

        assertThat(answer.losses()).hasSameSizeAs(input.points());
        for (PointLoss lost : answer.losses()) {
            lost.aftermath().ifPresent(after -> {
                Vector3 sum =
                        after.rest().points().stream().map(PointForce::pull).reduce(Vector3.ZERO, Vector3::plus);
                assertThat(sum.minus(load).length()).isLessThan(1e-9 * weight);
                assertThat(after.drop().metres()).isGreaterThan(-1e-9);
                assertThat(after.freeTravel().metres())
                        .isLessThanOrEqualTo(after.drop().metres() + 1e-9);
                PeakForces peaks = after.peaks().orElseThrow();
                assertThat(peaks.points()).hasSize(input.points().size() - 1);
                assertThat(peaks.on(lost.point())).isEmpty();
            });
        }
    }

    @ParameterizedTest
    @CsvSource({"20, 1.528", "45, 1.586"})
    void aStiffVPeaksAsTheLawSays(double half, double factor) {
        RigDraft v = Rigs.pair(2 * half).withRig(SetupDraft.of(RigKind.FOCUSED, 0, 0, 0, 2_000));

        assertThat(peak(loss(v, "A"), "B")).isCloseTo(factor, within(0.01));
    }
}
