package thalweg.rig;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import thalweg.units.Angle;

/** A rope that runs from the master over a redirect to the load. */
class RedirectTest {

    private static final Vector3 DOWN = new Vector3(0, -1, 0);

    private static RigDraft pair(RigKind kind) {
        RigDraft focused = Rigs.focused(
                List.of(PointDraft.of("A", -0.3, 0.6, 0), PointDraft.of("B", 0.3, 0.6, 0)), Vector3.ZERO, 0.9, 0, 10);
        SetupDraft rig = SetupDraft.of(kind, 0, 0, 0, Rigs.STIFFNESS_KN);
        return focused.withRig(kind == RigKind.LIMITED ? rig.withLimits(LimitDraft.at(0.1, 0.1), 0.2) : rig);
    }

    private static RigAnswer over(RigDraft draft, double x, double y, double z) {
        return Rigs.answer(draft.withRedirect(RedirectDraft.at(x, y, z)));
    }

    private static RedirectFigures figures(RigAnswer answer) {
        return answer.redirect().orElseThrow();
    }

    /** The pull on the master points from where it rests to the redirect, however it moves. */
    @ParameterizedTest
    @EnumSource(
            value = RigKind.class,
            names = {"FOCUSED", "SLIDING", "LOOP", "LIMITED"})
    void theRopePullsTheMasterTowardsTheRedirect(RigKind kind) {
        for (Vector3 at : List.of(new Vector3(0.8, -0.3, 0.2), new Vector3(-0.2, -2, 1), new Vector3(1, 0.5, 0))) {
            RigAnswer answer = over(pair(kind), at.x(), at.y(), at.z());
            Vector3 sum =
                    answer.steady().points().stream().map(PointForce::pull).reduce(Vector3.ZERO, Vector3::plus);

            assertThat(sum.length()).isCloseTo(0.9, within(1e-9));
            assertThat(sum.degreesTo(at.minus(answer.steady().master()))).isLessThan(1e-5);
        }
    }

    /** Whatever the rig, the master moved a little stores more: strands and rope together are convex. */
    @Test
    void theStateStoresLeast() {
        SplittableRandom random = new SplittableRandom(5);
        for (RigInput input : RandomRigs.ofEachKind(20_270, 30).toList()) {
            RigInput free = Rigs.input(RigDraft.of(input));
            Optional<RigInput> aimed = RigDraft.of(input)
                    .withRedirect(RedirectDraft.at(
                            random.nextDouble(-2, 2), random.nextDouble(-2, 0.5), random.nextDouble(-1, 1)))
                    .check()
                    .input();
            if (aimed.isEmpty()) {
                continue;
            }
            Vector3 at = aimed.get().redirect().orElseThrow().at();
            RigState state = Rigs.steady(aimed.get());
            double weight = input.load().weight().inKilonewtons();
            Network network = LayStrands.of(free);
            Energy strands = new Energy(network, Vector3.ZERO);
            strands.roundOff(1e-12);
            double[] rest = Energy.flat(FindRest.of(
                            network,
                            aimed.get()
                                    .load()
                                    .direction(aimed.get().load().toward())
                                    .times(weight))
                    .network()
                    .free());
            double least = strands.stored(rest) + weight * state.master().distance(at);
            for (int i = 0; i < 100; i++) {
                double step = Math.pow(10, random.nextDouble(-6, -2));
                double[] near = rest.clone();
                for (int axis = 0; axis < near.length; axis++) {
                    near[axis] += random.nextDouble(-step, step);
                }
                int last = near.length - 3;
                Vector3 master = new Vector3(near[last], near[last + 1], near[last + 2]);
                assertThat(strands.stored(near) + weight * master.distance(at))
                        .as("%s", input)
                        .isGreaterThan(least - 1e-9 * weight);
            }
        }
    }

    /** Plain statics: two equal tensions a deflection apart, 2 T sin(d/2). */
    @ParameterizedTest
    @CsvSource({"60, 1", "90, 1.41421356", "120, 1.73205081", "1e-9, 0"})
    void theForceOnItIsTwiceTheTensionTimesTheSineOfHalfTheDeflection(double degrees, double timesTension) {
        double aim = Math.toRadians(degrees);
        RigDraft stiff = pair(RigKind.FOCUSED)
                .withRig(SetupDraft.of(RigKind.FOCUSED, 0, 0, 0, 100_000))
                .withLoad(LoadDraft.ofForce(0.9, degrees, 0));
        RedirectFigures figures = figures(over(stiff, 0, -1, 0));

        assertThat(figures.deflection().degrees()).isCloseTo(degrees, within(0.01));
        assertThat(figures.force().inKilonewtons()).isCloseTo(0.9 * timesTension, within(2e-4));
        assertThat(figures.force().inKilonewtons())
                .isCloseTo(
                        new Vector3(Math.sin(aim), -Math.cos(aim), 0)
                                        .minus(DOWN)
                                        .length()
                                * 0.9,
                        within(2e-4));
    }

    @Test
    void theWorstOfTheSwayIsWhereTheRopeIsTurnedMost() {
        RedirectFigures figures = figures(over(pair(RigKind.FOCUSED), 0.5, -1, 0));

        assertThat(figures.worstToward().degrees()).isCloseTo(-10, within(1e-9));
        assertThat(figures.worst()).isGreaterThan(figures.force());
    }

    @Test
    void theSwayBeyondItDoesNotMoveTheMaster() {
        RigAnswer answer = over(pair(RigKind.FOCUSED), 0.5, -1, 0);

        assertThat(answer.sector().directions()).allMatch(state -> state.equals(answer.steady()));
        assertThat(answer.input().statedLoad().sway()).isEqualTo(new Angle(10));
    }

    @Test
    void withoutItTheRigHangsAsIfItHadNeverBeen() {
        RigAnswer answer = over(pair(RigKind.SLIDING), 0.7, -0.8, 0.3);
        RigAnswer free = Rigs.answer(pair(RigKind.SLIDING));
        RedirectFigures.Freed freed = figures(answer).freed();

        for (String point : List.of("A", "B")) {
            assertThat(freed.steady().at(point).force().inKilonewtons())
                    .isCloseTo(free.steady().at(point).force().inKilonewtons(), within(1e-9));
        }
        assertThat(freed.worst()).hasSameSizeAs(free.sector().worst());
        assertThat(freed.worst().get(0).force().inKilonewtons())
                .isCloseTo(free.sector().worst().get(0).force().inKilonewtons(), within(1e-9));
        assertThat(freed.turn()).isEqualTo(figures(answer).deflection());
    }

    /** A right angle of one metre and three: four metres of rope over the redirect, the straight way is sqrt(10). */
    @Test
    void theSlackIsTheDetourOfTheRope() {
        RigDraft stiff = pair(RigKind.FOCUSED).withRig(SetupDraft.of(RigKind.FOCUSED, 0, 0, 0, 100_000));
        RigAnswer answer = over(stiff.withLoad(roped(4)), 0, -1, 0);

        assertThat(figures(answer).freed().slack().orElseThrow().metres()).isCloseTo(4 - Math.sqrt(10), within(1e-3));
        assertThat(figures(over(stiff, 0, -1, 0)).freed().slack()).isEmpty();
        assertThat(figures(over(stiff.withLoad(roped(0.5)), 0, -1, 0)).freed().slack())
                .isEmpty();
    }

    private static LoadDraft roped(double metres) {
        OptionalDouble none = OptionalDouble.empty();
        return new LoadDraft(
                none,
                OptionalDouble.of(0.9),
                OptionalDouble.of(90),
                none,
                none,
                OptionalDouble.of(metres),
                OptionalDouble.of(40),
                none);
    }

    @Test
    void itsRatioIsItsStrengthOverTheLargestForceOnItAndUnknownWithoutOne() {
        RigDraft draft = pair(RigKind.FOCUSED);
        RedirectFigures known = figures(Rigs.answer(
                draft.withRedirect(Optional.of(new RedirectDraft("R", List.of(0.5, -1.0), OptionalDouble.of(12))))));

        assertThat(known.redirect().name()).isEqualTo("R");
        assertThat(known.ratio().orElseThrow()).isCloseTo(12 / known.worst().inKilonewtons(), within(1e-12));
        assertThat(figures(over(draft, 0.5, -1, 0)).ratio()).isEmpty();
    }

    @Test
    void aDraftOfTheRigIsTheRigAgain() {
        RigInput input = Rigs.input(pair(RigKind.LIMITED).withRedirect(RedirectDraft.at(0.5, -1, 0.2)));

        assertThat(RigDraft.of(input).check().input()).contains(input);
    }

    @Test
    void whatIsNoRedirectIsRefusedByItsKey() {
        RigDraft draft = pair(RigKind.FOCUSED);

        assertThat(refused(draft, new RedirectDraft("", List.of(), OptionalDouble.empty())))
                .containsExactly("load.redirect.at");
        assertThat(refused(draft, new RedirectDraft("", List.of(0.0, 0.0), OptionalDouble.empty())))
                .containsExactly("load.redirect.at");
        assertThat(refused(draft, new RedirectDraft("", List.of(0.0, -0.01), OptionalDouble.empty())))
                .containsExactly("load.redirect.at");
        assertThat(refused(draft, new RedirectDraft("", List.of(0.0, 1.0, 1.0, 1.0), OptionalDouble.empty())))
                .containsExactly("load.redirect.at");
        assertThat(refused(draft, new RedirectDraft("", List.of(1.0, 1.0), OptionalDouble.of(-3))))
                .containsExactly("load.redirect.strength_kN");
        assertThat(refused(draft, new RedirectDraft("R".repeat(50), List.of(1.0, 1.0), OptionalDouble.empty())))
                .containsExactly("load.redirect.name");
    }

    private static List<String> refused(RigDraft draft, RedirectDraft over) {
        return draft.withRedirect(Optional.of(over)).check().findings().stream()
                .map(RigFinding::key)
                .toList();
    }

    @Test
    void everyStudyTakesARedirect() {
        RigDraft draft = pair(RigKind.FOCUSED);
        RigDraft strong = draft.withPoints(draft.points().stream()
                .map(point -> new PointDraft(
                        point.name(), point.at(), OptionalDouble.of(3), point.spread(), point.holdsAlone()))
                .toList());
        RigInput input = Rigs.input(strong.withRedirect(RedirectDraft.at(0.4, -1, 0)));

        assertThat(FindBestFocus.of(input).found()).isPresent();
        assertThat(FindPeakRange.of(Analyze.of(input)).losses()).hasSize(2);
        assertThat(Cascade.of(input, 2_000, 1, (done, planned) -> true).trials())
                .isEqualTo(2_000);
        RigComparison comparison = CompareLayouts.of(input, RigPriority.UNSTATED);
        assertThat(comparison.layouts())
                .allMatch(layout -> layout.answer()
                        .filter(answer -> answer.redirect().isPresent())
                        .isPresent());
        assertThat(comparison.questions().get(1).answer()).contains(true);
    }
}
