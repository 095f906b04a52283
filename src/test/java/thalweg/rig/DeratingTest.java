package thalweg.rig;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import thalweg.fault.Sentence;

/** What condition, knots and age take from a rig's strengths, everywhere where a strength counts. */
class DeratingTest {

    private static final OptionalDouble NONE = OptionalDouble.empty();

    private static PointDraft point(String name, double x, Optional<PartCondition> condition) {
        return new PointDraft(name, List.of(x, 0.5, 0.0), OptionalDouble.of(20), NONE, Optional.of(true))
                .withTraits(PointTraitsDraft.NONE.found(condition));
    }

    /** Two points of 20 kN, of which B was found so. */
    private static RigDraft pair(Optional<PartCondition> ofB) {
        return Rigs.focused(
                List.of(point("A", -0.3, Optional.of(PartCondition.SOUND)), point("B", 0.3, ofB)),
                Vector3.ZERO,
                1,
                0,
                10);
    }

    private static RigDraft with(RigDraft draft, StrandTraitsDraft traits) {
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
                OptionalDouble.of(20),
                NONE,
                traits));
    }

    private static RigDraft worn(double share) {
        return with(pair(Optional.of(PartCondition.WORN)), StrandTraitsDraft.NONE.derated(Map.of("worn", share)));
    }

    private static PartSafety part(RigAnswer answer, String name) {
        return answer.safety().stream()
                .filter(part -> part.part().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static double ratio(RigAnswer answer, String name) {
        return part(answer, name).steady().ratio().orElseThrow();
    }

    private static double weakestAfterLossOfA(RigAnswer answer) {
        Aftermath left = answer.losses().get(0).aftermath().orElseThrow();
        return left.within().ratio().orElseThrow();
    }

    @Test
    void aWornPointHoldsHalf() {
        RigAnswer answer = Rigs.answer(pair(Optional.of(PartCondition.WORN)));

        assertThat(ratio(answer, "B")).isCloseTo(ratio(answer, "A") / 2, within(1e-9));
        assertThat(weakestAfterLossOfA(answer))
                .isCloseTo(weakestAfterLossOfA(Rigs.answer(pair(Optional.of(PartCondition.SOUND)))) / 2, within(1e-9));
        assertThat(part(answer, "B").strength().factors())
                .extracting(StrengthFactor::source)
                .containsExactly(FactorSource.OUR_CHOICE);
    }

    @Test
    void aStatedShareTakesThePlaceOfOursAndSaysSo() {
        RigAnswer answer = Rigs.answer(worn(0.7));

        assertThat(ratio(answer, "B")).isCloseTo(ratio(answer, "A") * 0.7, within(1e-9));
        assertThat(part(answer, "B").strength().factors())
                .extracting(StrengthFactor::print)
                .containsExactly("condition 0.7, as stated with the rig: found worn");
    }

    @ParameterizedTest
    @CsvSource({"DOUBTFUL, B was found doubtful", "UNSAFE, B was found unsafe"})
    void whatADoubtfulPointHoldsIsUnknownWhereverStrengthCounts(PartCondition condition, String why) {
        RigInput input = Rigs.input(pair(Optional.of(condition)));
        RigAnswer answer = Analyze.of(input);

        assertThat(part(answer, "B").steady().ratio()).isEmpty();
        assertThat(part(answer, "B").steady().why()).isEqualTo(why);
        assertThat(part(answer, "B").strength().atMost().orElseThrow().inKilonewtons())
                .isEqualTo(20);
        assertThat(FindBestFocus.of(input).found()).isEmpty();
        assertThat(Cascade.of(input, 100, 1, (done, all) -> true).unknown()).isPresent();
        assertThat(answer.checks())
                .filteredOn(check -> check.letter() == CheckLetter.S)
                .extracting(LetterCheck::verdict)
                .containsExactly(RigVerdict.UNKNOWN);
        assertThat(CompareLayouts.of(input, RigPriority.UNSTATED).layouts())
                .filteredOn(layout -> layout.answer().isPresent())
                .allMatch(layout -> layout.leastRatio().isEmpty());
    }

    @Test
    void aDoubtfulPointThatIsTooWeakAsStatedIsTooWeak() {
        RigDraft heavy = Rigs.focused(
                List.of(
                        point("A", -0.3, Optional.of(PartCondition.SOUND)),
                        point("B", 0.3, Optional.of(PartCondition.DOUBTFUL))),
                Vector3.ZERO,
                18,
                0,
                0);

        assertThat(Rigs.answer(heavy)
                        .losses()
                        .get(0)
                        .aftermath()
                        .orElseThrow()
                        .within()
                        .verdict())
                .contains(false);
    }

    @Test
    void aStatedShareMakesADoubtfulPointKnown() {
        RigDraft draft = with(
                pair(Optional.of(PartCondition.DOUBTFUL)), StrandTraitsDraft.NONE.derated(Map.of("doubtful", 0.3)));

        RigAnswer answer = Rigs.answer(draft);

        assertThat(ratio(answer, "B")).isCloseTo(ratio(answer, "A") * 0.3, within(1e-9));
    }

    @Test
    void whatNobodyLookedAtCountsInFullAndIsSaid() {
        RigAnswer answer = Rigs.answer(pair(Optional.of(PartCondition.UNKNOWN)));
        RigAnswer unstated = Rigs.answer(pair(Optional.empty()));

        assertThat(ratio(answer, "B")).isCloseTo(ratio(answer, "A"), within(1e-9));
        assertThat(part(answer, "B").strength().notes())
                .extracting(Sentence::toString)
                .containsExactly("nobody has looked at it");
        assertThat(part(unstated, "B").strength().notes())
                .extracting(Sentence::toString)
                .containsExactly("condition not stated");
    }

    @Test
    void aPointThatIsGoneIsRefused() {
        assertThat(pair(Optional.of(PartCondition.GONE)).check().findings())
                .extracting(RigFinding::print)
                .containsExactly("points[1].condition: is gone, and a point that is gone holds nothing;"
                        + " take it out of the rig");
    }

    @Test
    void theBestFocusLeansAwayFromAWornPoint() {
        BestFocus best = FindBestFocus.of(Rigs.input(pair(Optional.of(PartCondition.WORN))));

        assertThat(best.found().orElseThrow().focus().x()).isLessThan(-0.05);
    }

    @Test
    void aNamedKnotCountsByItsNominalShareWithItsRange() {
        StrandTraitsDraft traits = StrandTraitsDraft.NONE.tied(Optional.of(Knot.WATER_KNOT));
        PartStrength strength =
                part(Rigs.answer(with(pair(Optional.empty()), traits)), "A leg").strength();

        assertThat(strength.left().orElseThrow().inKilonewtons()).isCloseTo(40 * 0.64, within(1e-9));
        assertThat(strength.low().orElseThrow().inKilonewtons()).isCloseTo(40 * 0.55, within(1e-9));
        assertThat(strength.high().orElseThrow().inKilonewtons()).isCloseTo(40 * 0.70, within(1e-9));
        assertThat(strength.notes())
                .extracting(Sentence::toString)
                .containsExactly("condition not stated", "age not stated");
    }

    @Test
    void strandsAreWeakenedByConditionAndAge() {
        StrandTraitsDraft traits = StrandTraitsDraft.NONE
                .tied(Optional.of(Knot.WATER_KNOT))
                .found(Optional.of(PartCondition.WORN))
                .aged(Optional.of(Fibre.NYLON), OptionalDouble.of(3), Optional.of(Kept.OUTDOORS));
        PartStrength strength =
                part(Rigs.answer(with(pair(Optional.empty()), traits)), "A leg").strength();

        assertThat(strength.left().orElseThrow().inKilonewtons()).isCloseTo(40 * 0.64 * 0.5 * 0.45, within(1e-9));
        assertThat(strength.notes()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"9, false", "11, true"})
    void anAgeOfNoKnownFibreCountsOnlyPastTheMakersLimit(double years, boolean unknown) {
        StrandTraitsDraft traits = StrandTraitsDraft.NONE
                .tied(Optional.of(Knot.WATER_KNOT))
                .aged(Optional.empty(), OptionalDouble.of(years), Optional.empty());
        PartStrength strength =
                part(Rigs.answer(with(pair(Optional.empty()), traits)), "A leg").strength();

        assertThat(strength.left().isEmpty()).isEqualTo(unknown);
    }

    @Test
    void aStatedShareForAgeTakesThePlaceOfThePublishedOne() {
        StrandTraitsDraft traits = StrandTraitsDraft.NONE
                .tied(Optional.of(Knot.WATER_KNOT))
                .aged(Optional.empty(), OptionalDouble.of(15), Optional.empty())
                .derated(Map.of("age", 0.4));
        PartStrength strength =
                part(Rigs.answer(with(pair(Optional.empty()), traits)), "A leg").strength();

        assertThat(strength.left().orElseThrow().inKilonewtons()).isCloseTo(40 * 0.64 * 0.4, within(1e-9));
    }

    @Test
    void everyStatedTraitComesBackAsItsDraft() {
        StrandTraitsDraft traits = StrandTraitsDraft.NONE
                .tied(Optional.of(Knot.BOWLINE))
                .found(Optional.of(PartCondition.UNKNOWN))
                .aged(Optional.of(Fibre.UHMWPE), OptionalDouble.of(2), Optional.of(Kept.INDOORS))
                .derated(Map.of("worn", 0.6));
        RigDraft draft = with(pair(Optional.of(PartCondition.WORN)), traits);

        assertThat(RigDraft.of(Rigs.input(draft)).rig().traits()).isEqualTo(traits);
        assertThat(RigDraft.of(Rigs.input(draft)).rig().knotEfficiency()).isEmpty();
        assertThat(Rigs.input(RigDraft.of(Rigs.input(draft)))).isEqualTo(Rigs.input(draft));
    }

    @ParameterizedTest
    @CsvSource({"sound, 0.9", "worn, 0", "worn, 1.1"})
    void sharesThatMakeNoSenseAreRefusedByName(String word, double share) {
        RigDraft draft = with(pair(Optional.empty()), StrandTraitsDraft.NONE.derated(Map.of(word, share)));

        assertThat(draft.check().findings()).extracting(RigFinding::key).containsExactly("rig.derating." + word);
    }
}
