package thalweg.rig;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import thalweg.units.Angle;

/** Rigs whose master slides between two limiter knots, at rest: against other layouts, closed forms and laws. */
class LimitedTest {

    private static final Vector3 FOCUS = new Vector3(0, -0.5, 0);

    /** Two strands everywhere, so that the cord is the same on both sides of each knot. */
    private static RigDraft rig(double first, double second, double kilonewtons, double toward) {
        return rig(
                List.of(PointDraft.of("A", -0.2, 0, 0), PointDraft.of("B", 0.25, 0.1, 0.05)),
                LimitDraft.at(first, second).withStrands(2),
                kilonewtons,
                toward);
    }

    private static RigDraft rig(List<PointDraft> points, LimitDraft limits, double kilonewtons, double toward) {
        return Rigs.focused(points, FOCUS, kilonewtons, toward, 0)
                .withRig(kind(RigKind.LIMITED).withLimits(limits, 0));
    }

    private static SetupDraft kind(RigKind kind) {
        return SetupDraft.of(kind, FOCUS.x(), FOCUS.y(), FOCUS.z(), 70);
    }

    private static RigState steady(RigDraft draft) {
        return Rigs.steady(Rigs.input(draft));
    }

    private static double force(RigState state, int point) {
        return state.points().get(point).force().inKilonewtons();
    }

    private static boolean against(RigState state, int knot) {
        return state.knots().get(knot).againstMaster();
    }

    private static void assertSame(RigState one, RigState other) {
        assertThat(one.master().distance(other.master())).isLessThan(1e-9);
        for (int i = 0; i < one.points().size(); i++) {
            Vector3 pull = other.points().get(i).pull();
            assertThat(one.points().get(i).pull().minus(pull).length()).isLessThan(1e-9);
        }
    }

    /** With two strands everywhere a limited rig has as much cord between its points as a loop that slides. */
    @ParameterizedTest
    @ValueSource(doubles = {-12, -5, 0, 3, 10})
    void offBothKnotsItIsASlidingRig(double toward) {
        RigDraft draft = rig(0.2, 0.2, 0.9, toward);
        RigState limited = steady(draft);

        assertThat(limited.knots()).noneMatch(KnotPlace::againstMaster);
        assertSame(limited, steady(draft.withRig(kind(RigKind.SLIDING))));
        assertThat(limited.points().get(0).share()).isCloseTo(0.5, within(1e-9));
    }

    /**
     * Against the knot of A, A's leg ends where it was tied, and all the rest is one leg to B, longer by what the knot cut
     * off: a focused rig whose focus is at the knot, and whose other leg has slack.
     */
    @ParameterizedTest
    @CsvSource({"0.05, 0.12, -35", "0.01, 0.05, -20", "0.02, 0.3, -50", "0.02, 0.02, -60", "0.05, 0.1, 40"})
    void againstAKnotItIsAFocusedRig(double first, double second, double toward) {
        RigDraft draft = rig(first, second, 0.9, toward);
        RigInput input = Rigs.input(draft);
        RigState limited = Rigs.steady(input);
        int near = against(limited, 0) ? 0 : 1;
        Vector3 at = input.points().get(near).at();
        Vector3 other = input.points().get(1 - near).at();
        double limit = near == 0 ? first : second;
        Vector3 knot = FOCUS.plus(at.minus(FOCUS).times(limit / at.distance(FOCUS)));
        double slack = other.distance(FOCUS) + limit - other.distance(knot);
        SetupDraft tied = kind(RigKind.FOCUSED)
                .withFocus(knot)
                .withSlack(Map.of(input.points().get(1 - near).name(), slack));

        assertThat(against(limited, near)).isTrue();
        assertThat(against(limited, 1 - near)).isFalse();
        assertSame(limited, steady(draft.withRig(tied)));
    }

    /** One tension T on both sides, {@code T = W / (2 cos t)} with the half angle t of the sides as they are stretched. */
    @ParameterizedTest
    @CsvSource({"0.05, 1, 2, 0.9", "0.1, 2, 1, 5", "0.3, 1, 1, 0.2", "0.01, 2, 3, 20"})
    void underTheMiddleOfTwoLikePointsItIsAsItsClosedFormSays(
            double limit, int sliderStrands, int strands, double weight) {
        double half = 0.24;
        double way = Math.hypot(half, 0.5);
        RigDraft draft = rig(
                List.of(PointDraft.of("A", -half, 0, 0), PointDraft.of("B", half, 0, 0)),
                LimitDraft.at(limit, limit).withStrands(sliderStrands),
                weight,
                0);
        RigState state = steady(draft.withRig(draft.rig().withStrands(strands)));

        double tension = force(state, 0);
        double side = (way - limit) * (1 + tension / (strands * 70)) + limit * (1 + tension / (sliderStrands * 70));
        double below = Math.sqrt(side * side - half * half);
        assertThat(tension).isCloseTo(weight * side / (2 * below), within(1e-9 * weight));
        assertThat(state.master().y()).isCloseTo(-below, within(1e-9));
        assertThat(state.knots()).noneMatch(KnotPlace::againstMaster);
    }

    /** Along one line both sides hang alike, until the stretch brings the knot of the longer one to the master. */
    @ParameterizedTest
    @CsvSource({"0.1, 0.1, false", "0.001, 0.0009, false", "0.1, 0.0001, true"})
    void aPointAboveAnotherSharesHalfAndHalfUnlessAKnotIsInTheWay(double low, double high, boolean against) {
        RigState state = steady(rig(
                List.of(PointDraft.of("low", 0, 0, 0), PointDraft.of("high", 0, 0.5, 0)),
                LimitDraft.at(low, high).withStrands(2),
                0.9,
                0));

        assertThat(against(state, 1)).isEqualTo(against);
        assertThat(against(state, 0)).isFalse();
        if (against) {
            assertThat(state.at("high").share()).isBetween(0.01, 0.49);
        } else {
            assertThat(state.at("high").share()).isCloseTo(0.5, within(1e-9));
        }
    }

    /** {@code (2 EA W^2 / 8)^(1/3)} on a point, as for two flat legs of two strands that are just taut. */
    @Test
    void aFlatOneFollowsTheCubeRootLaw() {
        double weight = 1e-5;
        RigDraft flat = Rigs.pair(180)
                .withLoad(LoadDraft.ofForce(weight, 0, 0))
                .withRig(SetupDraft.of(RigKind.LIMITED, 0, 0, 0, 70)
                        .withLimits(LimitDraft.at(0.1, 0.2).withStrands(2), 0));

        double force = force(steady(flat), 0);

        assertThat(force).isCloseTo(Math.cbrt(2 * 70 * weight * weight / 8), within(force * 1e-4));
    }

    @Test
    void aLoadFarToOneSideLeavesTheOtherLegSlackAndAllOnTheFirst() {
        RigState state = steady(rig(0.05, 0.05, 0.9, 75));

        assertThat(against(state, 0)).isFalse();
        assertThat(against(state, 1)).isTrue();
        assertThat(force(state, 1)).isZero();
        assertThat(force(state, 0)).isCloseTo(0.9, within(1e-9));
        assertThat(state.strands().get(1).loaded()).isFalse();
        assertThat(state.angle()).isEmpty();
    }

    /** The leg of the knot at which the master rests leaves the master, and its direction counts in the angle. */
    @Test
    void theAngleAtAKnotIsThatOfItsLegAndTheOtherSide() {
        RigInput input = Rigs.input(rig(0.05, 0.12, 0.9, -25));
        RigState state = Rigs.steady(input);

        assertThat(against(state, 0)).isTrue();
        Vector3 toA = input.points().get(0).at().minus(state.master());
        Vector3 toB = input.points().get(1).at().minus(state.master());
        assertThat(state.angle().orElseThrow().degrees()).isCloseTo(toA.degreesTo(toB), within(1e-6));
    }

    /** What holds the kink: a knot at the master is pulled there at least as hard as its leg pulls it away. */
    @Test
    void everyKnotIsInBalanceWhereverTheMasterRests() {
        RandomRigs.some(RigKind.LIMITED, 71, 600).forEach(input -> {
            RigState state = Rigs.steady(input);
            double slider = total(state.strands().get(2));
            for (int i = 0; i < 2; i++) {
                double leg = total(state.strands().get(i));
                Vector3 at = input.points().get(i).at();
                Vector3 knot = state.knots().get(i).at();
                double round = at.distance(knot) + knot.distance(state.master()) - at.distance(state.master());
                assertThat(round).as("the knot lies in one line with its leg").isLessThan(1e-9);
                if (against(state, i)) {
                    assertThat(leg).isLessThanOrEqualTo(slider * (1 + 1e-9));
                } else {
                    assertThat(leg).isCloseTo(slider, within(1e-9 * slider));
                }
            }
        });
    }

    private static double total(StrandPull strand) {
        return strand.count() * strand.tension().inKilonewtons();
    }

    /** The whole network, its knots as free nodes like any other, given to the solver that knows nothing of knots. */
    @Test
    void itIsTheNetworkOfStrandsAndFreeKnotsThatItSays() {
        RandomRigs.some(RigKind.LIMITED, 72, 300).forEach(input -> {
            Vector3 load = input.load()
                    .direction(input.load().toward())
                    .times(input.load().weight().inKilonewtons());
            Network network = LayStrands.of(input);
            Equilibrium groped = FindEquilibrium.of(network, load);
            Equilibrium found = FindRest.of(network, load);

            for (int i = 0; i < 2; i++) {
                assertThat(groped.pullOn(i).minus(found.pullOn(i)).length())
                        .as(input.toString())
                        .isLessThan(2e-5 * load.length());
            }
            assertNothingIsLess(found, load);
        });
    }

    private static void assertNothingIsLess(Equilibrium found, Vector3 load) {
        Energy energy = new Energy(found.network(), load);
        double[] rest = Energy.flat(found.network().free());
        double least = value(energy, rest);
        SplittableRandom random = new SplittableRandom(5);
        for (int i = 0; i < 60; i++) {
            double[] away = rest.clone();
            double far = Math.pow(10, random.nextDouble(-5, -1));
            for (int a = 0; a < away.length; a++) {
                away[a] += random.nextDouble(-far, far);
            }
            assertThat(value(energy, away)).isGreaterThanOrEqualTo(least - 1e-12 * load.length());
        }
    }

    private static double value(Energy energy, double[] places) {
        return energy.slopeAt(places, new double[energy.size()]);
    }

    /** As the load turns, the master comes up against one knot, then is free, then against the other, without a jump. */
    @Test
    void forcesHaveNoJumpWhereTheMasterComesUpAgainstAKnot() {
        RigInput input = Rigs.input(rig(0.04, 0.06, 0.9, 0));
        RestState rest = new RestState(input);
        RigState before = rest.under(new Angle(-90));
        boolean[] met = new boolean[3];
        for (double degrees = -89.95; degrees <= 90; degrees += 0.05) {
            RigState now = rest.under(new Angle(degrees));
            for (int i = 0; i < 2; i++) {
                assertThat(force(now, i)).isCloseTo(force(before, i), within(0.02));
                met[i] |= against(now, i);
            }
            met[2] |= now.knots().stream().noneMatch(KnotPlace::againstMaster);
            before = now;
        }
        assertThat(met).containsExactly(true, true, true);
    }

    @Test
    void longerLimitsLeaveTheMasterFreeOverMoreOfTheSway() {
        long before = -1;
        for (double limit : new double[] {0.01, 0.03, 0.06, 0.12}) {
            RigDraft draft = rig(limit, limit, 0.9, 0);
            long free = Rigs.answer(draft.withLoad(draft.load().withSway(40))).sector().directions().stream()
                    .filter(state -> state.knots().stream().noneMatch(KnotPlace::againstMaster))
                    .count();
            assertThat(free).isGreaterThanOrEqualTo(before);
            before = free;
        }
        assertThat(before).isBetween(5L, 20L);
    }
}
