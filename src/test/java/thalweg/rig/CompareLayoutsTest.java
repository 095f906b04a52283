package thalweg.rig;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import thalweg.fault.Sentence;

final class CompareLayoutsTest {

    /** Two points 0.6 m apart and a focus 0.5 m below them, under 0.9 kN. */
    private static RigInput pair(double left, double right, double sway) {
        return Rigs.input(Rigs.focused(
                List.of(holding("A", -0.3, 0, left), holding("B", 0.3, 0, right)),
                new Vector3(0, -0.5, 0),
                0.9,
                0,
                sway));
    }

    private static PointDraft holding(String name, double x, double y, double kilonewtons) {
        return new PointDraft(
                name, List.of(x, y), OptionalDouble.of(kilonewtons), OptionalDouble.empty(), Optional.empty());
    }

    private static LaidOut choice(RigInput input, RigPriority priority) {
        return CompareLayouts.of(input, priority).recommendation().choice().orElseThrow();
    }

    @Test
    void aLoadThatStaysSpeaksForLegsTiedInOneKnot() {
        LaidOut choice = choice(pair(20, 20, 0), RigPriority.UNSTATED);

        assertThat(choice.label()).isEqualTo("focused");
        assertThat(choice.farthestDrop()).isLessThan(0.1);
    }

    @Test
    void aLoadThatWandersSpeaksForAMasterThatSlidesBetweenKnots() {
        RigComparison comparison = CompareLayouts.of(pair(20, 20, 25), RigPriority.UNSTATED);
        LaidOut choice = comparison.recommendation().choice().orElseThrow();

        assertThat(choice.label()).isEqualTo("limited");
        assertThat(comparison.questions().get(0).answer()).contains(true);
        assertThat(comparison.questions().get(1).answer()).contains(false);
        assertThat(comparison.recommendation().wouldChange())
                .anyMatch(line ->
                        line.toString().matches("If the load swayed no more than \\d+° to either side: focused.*"));
    }

    @Test
    void aPointAThirdAsStrongSpeaksForLeaningTheFocusToTheOther() {
        RigComparison comparison = CompareLayouts.of(pair(24, 8, 0), RigPriority.UNSTATED);
        LaidOut choice = comparison.recommendation().choice().orElseThrow();

        assertThat(choice.label()).isEqualTo("focused with the focus moved");
        assertThat(choice.answer().orElseThrow().input().rig().focus().x()).isNegative();
        assertThat(choice.answer().orElseThrow().steady().at("B").share()).isLessThan(0.35);
        assertThat(comparison.questions().get(0).answer()).contains(false);
    }

    @Test
    void whereLittleExtensionMattersMostAWanderingLoadStaysFocused() {
        RigInput wandering = pair(20, 20, 25);

        assertThat(choice(wandering, RigPriority.UNSTATED).kind()).isEqualTo(RigKind.LIMITED);
        assertThat(choice(wandering, RigPriority.LITTLE_EXTENSION).kind()).isEqualTo(RigKind.FOCUSED);
        assertThat(CompareLayouts.of(wandering, RigPriority.UNSTATED)
                        .recommendation()
                        .wouldChange())
                .anyMatch(line -> line.toString().startsWith("If little extension matters most: focused"));
    }

    @Test
    void whereEqualSharesMatterMostTheMasterSlides() {
        assertThat(choice(pair(20, 20, 15), RigPriority.EQUAL_SHARES).kind()).isEqualTo(RigKind.LIMITED);
    }

    @Test
    void theSwayAtWhichItTurnsIsTheOneFromWhichItIsRecommended() {
        String line = CompareLayouts.of(pair(20, 20, 0), RigPriority.UNSTATED).recommendation().wouldChange().stream()
                .map(Sentence::toString)
                .filter(one -> one.startsWith("If the load swayed"))
                .findFirst()
                .orElseThrow();
        double sway = Double.parseDouble(line.replaceFirst("If the load swayed (\\d+)°.*", "$1"));

        assertThat(choice(pair(20, 20, sway), RigPriority.UNSTATED).kind()).isEqualTo(RigKind.LIMITED);
        assertThat(choice(pair(20, 20, sway - 5), RigPriority.UNSTATED).kind()).isEqualTo(RigKind.FOCUSED);
    }

    @Test
    void unknownStrengthsAreSaidAndAnswerNoQuestion() {
        RigInput unknown = Rigs.input(Rigs.pair(60));
        RigComparison comparison = CompareLayouts.of(unknown, RigPriority.UNSTATED);

        assertThat(comparison.questions().get(0).answer()).isEmpty();
        assertThat(comparison.recommendation().restsOn())
                .anyMatch(line -> line.toString().startsWith("Strengths are not all known"));
        assertThat(comparison.layouts())
                .allMatch(one -> one.answer().isEmpty() || one.leastRatio().isEmpty());
    }

    @Test
    void aSwayThatNobodyStatedIsNoAnswer() {
        RigDraft draft = Rigs.pair(60);
        RigInput unsaid = Rigs.input(draft.withLoad(new LoadDraft(
                OptionalDouble.of(90),
                OptionalDouble.empty(),
                OptionalDouble.of(0),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty())));

        assertThat(CompareLayouts.of(unsaid, RigPriority.UNSTATED)
                        .questions()
                        .get(1)
                        .answer())
                .isEmpty();
    }

    @Test
    void layoutsForTwoPointsAreNotPossibleOnThree() {
        RigInput three = Rigs.input(Rigs.focused(
                List.of(holding("A", -0.4, 0, 15), holding("B", 0, 0.1, 15), holding("C", 0.4, 0, 15)),
                new Vector3(0, -0.6, 0),
                0.9,
                0,
                0));
        RigComparison comparison = CompareLayouts.of(three, RigPriority.UNSTATED);

        assertThat(comparison.layouts().stream().filter(one -> one.answer().isEmpty()))
                .extracting(LaidOut::kind)
                .containsExactly(RigKind.LIMITED, RigKind.LOOP);
        assertThat(comparison.recommendation().choice().orElseThrow().kind()).isEqualTo(RigKind.FOCUSED);
    }

    @Test
    void onePointLeavesNoChoice() {
        RigInput one = Rigs.input(new RigDraft(
                "",
                List.of(PointDraft.of("A", 0, 0, 0)),
                LoadDraft.ofForce(1, 0, 0),
                SetupDraft.of(RigKind.SINGLE, 0, -0.3, 0, Rigs.STIFFNESS_KN)));

        assertThat(CompareLayouts.of(one, RigPriority.UNSTATED).recommendation().choice())
                .isEqualTo(Optional.empty());
    }
}
