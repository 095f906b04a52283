package thalweg.rig;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** The focus that spares the weakest point most. */
class BestFocusTest {

    private static final OptionalDouble NONE = OptionalDouble.empty();

    private static PointDraft point(String name, double x, double y, double strength) {
        return new PointDraft(
                name, List.of(x, y, 0.0), strength > 0 ? OptionalDouble.of(strength) : NONE, NONE, Optional.empty());
    }

    /** Two points 1 m above the focus and 2 m apart, under a load so small that nothing stretches much. */
    private static RigDraft pair(double strengthOfA, double strengthOfB, double focusX) {
        return Rigs.focused(
                List.of(point("A", -1, 1, strengthOfA), point("B", 1, 1, strengthOfB)),
                new Vector3(focusX, 0, 0),
                0.001,
                0,
                0);
    }

    private static BestFocus.Found found(RigDraft draft) {
        BestFocus best = FindBestFocus.of(Rigs.input(draft));
        return best.found().orElseThrow(() -> new AssertionError(best.why()));
    }

    private static String why(RigDraft draft) {
        BestFocus best = FindBestFocus.of(Rigs.input(draft));
        assertThat(best.found()).isEmpty();
        return best.why();
    }

    /** By symmetry, wherever the given focus is. */
    @Test
    void betweenTwoEqualPointsTheMiddleIsBest() {
        for (double start : new double[] {0, 0.4, -0.7}) {
            BestFocus.Found best = found(pair(20, 20, start));

            assertThat(best.focus().x()).isCloseTo(0, within(5e-4));
            assertThat(best.focus().y()).isCloseTo(0, within(1e-9));
            assertThat(best.shares().get(0).share()).isCloseTo(0.5, within(5e-4));
        }
    }

    /**
     * With the legs at angles a and b from straight down, statics gives the forces W sin b / sin(a + b) and
     * W sin a / sin(a + b). Both points are equally near to their strength where strengths are as sin b to sin a.
     */
    @Test
    void aVLeansSoFarThatBothPointsAreEquallyNearToTheirStrength() {
        for (double at : new double[] {-0.6, -0.3, 0.2}) {
            double a = Math.atan(1 + at);
            double b = Math.atan(1 - at);
            double k = 10;

            BestFocus.Found best = found(pair(k * Math.sin(b), k * Math.sin(a), 0));

            assertThat(best.focus().x()).isCloseTo(at, within(1e-3));
            assertThat(best.leastRatio()).isCloseTo(k * Math.sin(a + b) / 0.001, within(0.003 * best.leastRatio()));
            assertThat(best.leastRatio()).isGreaterThanOrEqualTo(best.ratioAsGiven());
        }
    }

    @Test
    void noPlaceOfAFineScanIsBetter() {
        RandomRigs.some(11, 400)
                .filter(input -> input.points().size() == 2 || input.points().size() == 3)
                .limit(8)
                .forEach(BestFocusTest::holdAgainstAScan);
    }

    private static void holdAgainstAScan(RigInput without) {
        RigDraft draft = RigDraft.of(without);
        List<PointDraft> points = draft.points().stream()
                .map(point -> new PointDraft(
                        point.name(),
                        point.at(),
                        OptionalDouble.of(8 + 7 * point.at().get(0)),
                        point.spread(),
                        point.holdsAlone()))
                .filter(point -> point.strengthKilonewtons().getAsDouble() > 0)
                .toList();
        RigDraft strong = draft.withPoints(points).withRig(draft.rig().withSlack(Map.of()));
        RigInput input = Rigs.input(strong);
        BestFocus best = FindBestFocus.of(input);
        double aim = input.load().toward().inRadians();
        Vector3 across = new Vector3(Math.cos(aim), Math.sin(aim), 0);
        double scanned = 0;
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (RigPoint point : input.points()) {
            double along = point.at().minus(input.rig().focus()).dot(across);
            low = Math.min(low, along);
            high = Math.max(high, along);
        }
        for (int i = 0; i <= 120; i++) {
            Vector3 focus = input.rig().focus().plus(across.times(low + (high - low) * i / 120));
            Optional<RigInput> moved =
                    strong.withRig(strong.rig().withFocus(focus)).check().input();
            scanned = Math.max(scanned, moved.map(BestFocusTest::leastIfShared).orElse(0.0));
        }
        double reported = best.found().map(BestFocus.Found::leastRatio).orElse(0.0);
        assertThat(reported).as(best.why()).isGreaterThanOrEqualTo(scanned * 0.998);
        best.found()
                .ifPresent(one -> assertThat(one.shares())
                        .allSatisfy(share -> assertThat(share.share()).isGreaterThan(0.1499)));
    }

    /** The least ratio over the sector; 0 where a point carries less than 15 % at the aim. */
    private static double leastIfShared(RigInput input) {
        RestState rest = new RestState(input);
        double least = Double.POSITIVE_INFINITY;
        for (int step = -10; step <= 10; step++) {
            double degrees =
                    input.load().toward().degrees() + input.load().sway().degrees() * step / 10;
            RigState state = rest.under(new thalweg.units.Angle(degrees));
            for (int i = 0; i < input.points().size(); i++) {
                PointForce force = state.points().get(i);
                if (step == 0 && force.share() < 0.15) {
                    return 0;
                }
                least = Math.min(
                        least,
                        input.points().get(i).strength().orElseThrow().newtons()
                                / force.force().newtons());
            }
        }
        return least;
    }

    @Test
    void theRuleOfLeastSharesHoldsBackAndSaysSo() {
        BestFocus best = FindBestFocus.of(Rigs.input(pair(100, 1, 0)));

        BestFocus.Found found = best.found().orElseThrow();
        assertThat(best.why()).contains("our own rule", "15 %", "B would carry less");
        assertThat(found.shares().get(1).share()).isCloseTo(0.15, within(0.001));
        BestFocus freer = FindBestFocus.of(Rigs.input(pair(100, 1, 0)), 0.05);
        assertThat(freer.found().orElseThrow().leastRatio()).isGreaterThan(found.leastRatio());
    }

    @Test
    void theSwayCounts() {
        RigDraft still = pair(20, 10, 0);
        RigDraft swaying = still.withLoad(LoadDraft.ofForce(0.001, 0, 30));

        assertThat(found(swaying).leastRatio()).isLessThan(found(still).leastRatio());
    }

    @Test
    void aFocusThatIsAsGoodAsAnyStays() {
        BestFocus best = FindBestFocus.of(Rigs.input(pair(20, 20, 0)));

        assertThat(best.found().orElseThrow().focus()).isEqualTo(Vector3.ZERO);
        assertThat(best.why()).contains("No other focus on the line is better");
    }

    @Test
    void theLineLiesAcrossTheAim() {
        RigDraft turned = pair(20, 15, 0).withLoad(LoadDraft.ofForce(0.001, 20, 0));

        Vector3 focus = found(turned).focus();

        assertThat(focus.length()).isGreaterThan(0.01);
        assertThat(Math.abs(focus.dot(new Vector3(Math.sin(Math.toRadians(20)), -Math.cos(Math.toRadians(20)), 0))))
                .isLessThan(1e-9);
    }

    @Test
    void withoutStrengthsThereIsNone() {
        assertThat(why(pair(20, 0, 0))).contains("Not known: the strength of B");
    }

    @Test
    void layoutsThatTheFocusDoesNotShareSaySo() {
        RigDraft draft = pair(20, 10, 0);

        assertThat(why(draft.withRig(SetupDraft.of(RigKind.SLIDING, 0, 0, 0, 70))))
                .contains("place of its own");
        assertThat(why(draft.withRig(SetupDraft.of(RigKind.LOOP, 0, 0, 0, 70)))).contains("place of its own");
        assertThat(why(new RigDraft(
                        "",
                        List.of(point("tree", 0, 0, 20)),
                        LoadDraft.ofForce(1, 0, 10),
                        SetupDraft.of(RigKind.SINGLE, 0, -0.5, 0, 70))))
                .contains("One point bears the whole load");
    }

    @Test
    void withASlackLegTheMasterDoesNotHangAtTheFocus() {
        RigDraft draft = pair(20, 20, 0);

        assertThat(why(draft.withRig(draft.rig().withSlack(Map.of("B", 1.2))))).contains("The leg of B has slack");
    }

    @Test
    void wherePointsCannotShareAsTheRuleAsksThereIsNone() {
        BestFocus best = FindBestFocus.of(Rigs.input(pair(20, 10, 0)), 0.6);

        assertThat(best.found()).isEmpty();
        assertThat(best.why()).contains("Nowhere on the line", "60 %", "our own rule");
    }

    @Test
    void pointsAboveOneAnotherLeaveNoWayToLean() {
        RigDraft draft =
                Rigs.focused(List.of(point("A", 0, 1, 20), point("B", 0, 1.5, 20)), new Vector3(0, 0, 0), 0.001, 0, 0);

        assertThat(why(draft)).contains("in one place");
    }
}
