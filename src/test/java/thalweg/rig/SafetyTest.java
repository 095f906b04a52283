package thalweg.rig;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** How many times each part would hold the largest force on it. */
class SafetyTest {

    private static final OptionalDouble NONE = OptionalDouble.empty();

    private static PointDraft point(String name, double x, double y, double strength) {
        return new PointDraft(
                name, List.of(x, y, 0.0), strength > 0 ? OptionalDouble.of(strength) : NONE, NONE, Optional.empty());
    }

    /** Two points on a level, one metre of leg each, under a load so small that the legs hardly stretch. */
    private static RigDraft pair(double halfAngle, double strengthOfA, double strengthOfB) {
        double t = Math.toRadians(halfAngle);
        return Rigs.focused(
                List.of(
                        point("A", -Math.sin(t), Math.cos(t), strengthOfA),
                        point("B", Math.sin(t), Math.cos(t), strengthOfB)),
                Vector3.ZERO,
                0.01,
                0,
                0);
    }

    private static RigDraft tied(RigDraft draft, double strand, OptionalDouble knots) {
        SetupDraft rig = draft.rig();
        return draft.withRig(new SetupDraft(
                rig.kind(),
                rig.focus(),
                rig.stiffnessKilonewtons(),
                rig.strands(),
                rig.slackMetres(),
                rig.captured(),
                rig.friction(),
                rig.limits(),
                OptionalDouble.of(strand),
                knots));
    }

    private static PartSafety part(RigDraft draft, String name) {
        return Rigs.answer(draft).safety().stream()
                .filter(part -> part.part().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static double steady(RigDraft draft, String name) {
        return part(draft, name).steady().ratio().orElseThrow();
    }

    /** Force on a point W / (2 cos t): B. Gaines, Rappelling, 2013, p. 61, gives 0.58 W at 60 degrees between legs. */
    @Test
    void atRestAPointHoldsItsStrengthOverTheForceOfTheV() {
        RigDraft draft = tied(pair(30, 20, 12), 10, OptionalDouble.of(0.64));
        double force = 0.01 / (2 * Math.cos(Math.toRadians(30)));

        assertThat(steady(draft, "A")).isCloseTo(20 / force, within(2.0));
        assertThat(steady(draft, "B")).isCloseTo(12 / force, within(2.0));
        assertThat(12 / steady(draft, "B") / 0.01).isCloseTo(0.58, within(0.005));
    }

    @Test
    void aLegIsAsStrongAsItsMaterialTimesItsStrandsTimesWhatItsKnotsLeave() {
        RigDraft two = tied(pair(30, 20, 12), 10, OptionalDouble.of(0.64));
        RigDraft three = two.withRig(two.rig().withStrands(3));

        assertThat(steady(two, "A leg")).isCloseTo(steady(two, "A") / 20 * 10 * 2 * 0.64, within(1e-6));
        assertThat(steady(three, "A leg")).isCloseTo(steady(two, "A leg") * 1.5, within(0.5));
    }

    /** The stiff symmetric V peaks at W (3 - 2 cos t + |cos t - 1 / (2 cos t)|): plain mechanics, 1.528 W at 20 degrees. */
    @Test
    void afterALossTheForceIsThePeakOfTheStiffV() {
        RigDraft draft = tied(pair(20, 20, 12), 10, OptionalDouble.of(0.5));

        assertThat(part(draft, "B").afterLoss().ratio().orElseThrow()).isCloseTo(12 / 0.01528, within(8.0));
        assertThat(part(draft, "B leg").afterLoss().ratio().orElseThrow()).isCloseTo(10 / 0.01528, within(7.0));
        assertThat(part(draft, "B").afterLoss().why()).isEqualTo("when A goes");
    }

    @Test
    void theHardestDirectionOfTheSwayCounts() {
        RigDraft still = pair(30, 20, 12);
        RigDraft swaying = still.withLoad(LoadDraft.ofForce(0.01, 0, 25));

        assertThat(steady(swaying, "A")).isLessThan(steady(still, "A"));
        assertThat(part(swaying, "A").steady().why()).isEqualTo("with the load toward 25°");
        WorstForce worst = Rigs.answer(swaying).sector().worstOf("A");
        assertThat(steady(swaying, "A")).isCloseTo(20 / worst.force().inKilonewtons(), within(1e-9));
    }

    @Test
    void whatIsNotKnownHasAReasonAndNoRatio() {
        RigDraft draft = pair(30, 20, 0);

        assertThat(part(draft, "B").steady().ratio()).isEmpty();
        assertThat(part(draft, "B").steady().why()).isEqualTo("the strength of B is not known");
        assertThat(part(draft, "B").afterLoss().why()).isEqualTo("the strength of B is not known");
        assertThat(part(draft, "A leg").steady().why()).isEqualTo("the strength of a strand is not known");
        assertThat(part(tied(draft, 10, NONE), "A leg").steady().why()).contains("the knots leave is not known");
        assertThat(part(draft, "B").steady().print()).isEmpty();
    }

    @Test
    void aSinglePointHasNothingAfterALoss() {
        RigDraft draft = new RigDraft(
                "",
                List.of(point("tree", 0, 0, 20)),
                LoadDraft.ofForce(1, 0, 10),
                SetupDraft.of(RigKind.SINGLE, 0, -0.5, 0, 70));

        assertThat(steady(draft, "tree")).isCloseTo(20, within(1e-6));
        assertThat(part(draft, "tree").afterLoss().ratio()).isEmpty();
        assertThat(part(draft, "tree leg").afterLoss().why()).contains("bears nothing after any loss");
    }

    @Test
    void aSlackBackUpBearsNothingAtRestAndItsPeakCountsWhenTheOtherGoes() {
        RigDraft draft = pair(30, 20, 12);
        RigDraft slack = draft.withRig(draft.rig().withSlack(Map.of("B", 0.6)));

        assertThat(part(slack, "B").steady().ratio()).isEmpty();
        assertThat(part(slack, "B").steady().why()).contains("bears nothing in any direction");
        assertThat(part(slack, "B").afterLoss().ratio()).isPresent();
    }

    @Test
    void whereNothingKeepsTheMasterInTheLoopThereIsNothingAfterALoss() {
        RigDraft draft = pair(30, 20, 12);
        RigDraft open = tied(
                draft.withRig(SetupDraft.of(RigKind.SLIDING, 0, 0, 0, 70).withSliding(false, 0.2)),
                10,
                OptionalDouble.of(0.5));

        assertThat(part(open, "A").afterLoss().ratio()).isEmpty();
        assertThat(part(open, "sliding loop").steady().ratio()).isPresent();
        assertThat(part(open, "sliding loop").afterLoss().why()).contains("bears nothing after any loss");
    }

    @Test
    void aPeakThatCannotBeFollowedLeavesTheRatioUnknown() {
        RigDraft draft = new RigDraft(
                "",
                List.of(point("A", -0.3, 0, 20), point("B", 0.3, 0, 20)),
                LoadDraft.ofMass(0.001, 0, 0),
                SetupDraft.of(RigKind.FOCUSED, 0, -0.6, 0, 90_000).withStrands(24));

        assertThat(part(draft, "A").steady().ratio()).isPresent();
        assertThat(part(draft, "A").afterLoss().ratio()).isEmpty();
        assertThat(part(draft, "A").afterLoss().why()).isEqualTo("the motion is too fast to be followed when B goes");
    }

    @Test
    void everyPartOfEveryLayoutHasARatioOrAReason() {
        RandomRigs.ofEachKind(7, 12).forEach(input -> {
            RigAnswer answer = Analyze.of(input);

            assertThat(answer.safety())
                    .hasSize(input.points().size() + answer.steady().strands().size());
            assertThat(answer.safety()).allSatisfy(part -> {
                assertThat(part.steady().ratio()).isEmpty();
                assertThat(part.steady().why()).isNotBlank();
            });
        });
    }

    @Test
    void theRangeOfAKnotGoesFromItsLeastToItsMost() {
        for (Knot knot : Knot.values()) {
            assertThat(knot.low().left())
                    .as(knot.name())
                    .isLessThanOrEqualTo(knot.nominal().left());
            assertThat(knot.nominal().left())
                    .as(knot.name())
                    .isLessThanOrEqualTo(knot.high().left());
        }
        RigDraft draft = tied(pair(30, 20, 12), 0.01, NONE);
        PartSafety leg = part(
                draft.withRig(draft.rig().withTraits(StrandTraitsDraft.NONE.tied(Optional.of(Knot.WATER_KNOT)))),
                "A leg");

        assertThat(leg.steady().print()).isEqualTo("2.21");
        assertThat(leg.printRange(leg.steady())).isEqualTo("1.90 to 2.42");
    }

    /** The figures of the sources that were seen: see {@link Knot.Source}. */
    @Test
    void theSharesAreThoseOfTheSources() {
        assertThat(Knot.DOUBLE_OVERHAND_LOOP.nominal()).isEqualTo(new Knot.Share(0.618, Knot.Source.SAEZ));
        assertThat(Knot.WATER_KNOT.nominal()).isEqualTo(new Knot.Share(0.64, Knot.Source.RESCUE_TABLE));
        assertThat(Knot.DOUBLE_FISHERMANS.nominal()).isEqualTo(new Knot.Share(0.68, Knot.Source.RESCUE_TABLE));
        assertThat(Knot.FIGURE_EIGHT.nominal()).isEqualTo(new Knot.Share(0.80, Knot.Source.RESCUE_TABLE));
        assertThat(Knot.BUTTERFLY.nominal()).isEqualTo(new Knot.Share(0.75, Knot.Source.RESCUE_TABLE));
        assertThat(Knot.OVERHAND.nominal()).isEqualTo(new Knot.Share(0.45, Knot.Source.JACOBSON));
        assertThat(Knot.BOWLINE.nominal()).isEqualTo(new Knot.Share(0.60, Knot.Source.JACOBSON));
        assertThat(Knot.CLOVE_HITCH.nominal()).isEqualTo(new Knot.Share(0.75, Knot.Source.JACOBSON));
        assertThat(Knot.TIED_LOOP.high()).isEqualTo(new Knot.Share(0.75, Knot.Source.GAINES));
        assertThat(Knot.GIRTH_HITCH.nominal().source()).isEqualTo(Knot.Source.MEMORY);
    }
}
