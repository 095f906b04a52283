package thalweg.rig;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import thalweg.units.Force;

class ChecksTest {

    private static LetterCheck check(RigDraft draft, CheckLetter letter) {
        return Rigs.answer(draft).checks().stream()
                .filter(check -> check.letter() == letter)
                .findFirst()
                .orElseThrow();
    }

    private static RigDraft stiff(double degrees, double sway) {
        return Rigs.pair(degrees)
                .withLoad(LoadDraft.ofForce(1e-3, 0, sway))
                .withRig(SetupDraft.of(RigKind.FOCUSED, 0, 0, 0, 100_000));
    }

    @Test
    void everyLetterIsJudged() {
        assertThat(Rigs.answer(Rigs.pair(60)).checks())
                .extracting(LetterCheck::letter)
                .containsExactly(CheckLetter.values());
    }

    /** Common practice names no figure: the lines are the program's own and say so. */
    @ParameterizedTest
    @CsvSource({"2, 2, GOOD, 5", "3, 2, GOOD, 6", "4, 2, WATCH, 7", "6, 2, WATCH, 9", "2, 4, WATCH, 7", "3, 5, POOR, 16"
    })
    void timelyCountsWhatThereIsToTieAndToClip(int points, int strands, RigVerdict verdict, int things) {
        List<PointDraft> fan = IntStream.range(0, points)
                .mapToObj(i -> PointDraft.of("P" + i, 0.2 * i, 0, 0))
                .toList();
        RigDraft rig = Rigs.focused(fan, new Vector3(0.3, -0.9, 0), 1, 0, 0);
        LetterCheck check = check(rig.withRig(rig.rig().withStrands(strands)), CheckLetter.T);

        assertThat(check.verdict()).isEqualTo(verdict);
        assertThat(check.figure()).hasValue(things);
        assertThat(check.why()).contains("our own line").contains("is not known here");
    }

    @ParameterizedTest
    @CsvSource({
        "45, GOOD, within the ideal of 60°",
        "59, GOOD, within the ideal of 60°",
        "61, WATCH, past the ideal of 60°",
        "89, WATCH, past the ideal of 60°",
        "91, WATCH, past the 90°",
        "119, WATCH, past the 90°",
        "121, POOR, past the 120°",
        "170, POOR, past the 120°",
    })
    void theAngleIsHeldAgainstWhatPracticeAndTheStudySay(double degrees, RigVerdict verdict, String line) {
        LetterCheck check = check(stiff(degrees, 0), CheckLetter.A);

        assertThat(check.verdict()).isEqualTo(verdict);
        assertThat(check.figure().orElseThrow()).isCloseTo(degrees, within(0.01));
        assertThat(check.why()).contains(degrees + "°").contains(line);
    }

    /** A triangle of 60 degrees pulls each point with the whole load, as two legs do at 120 (see LoopsTest). */
    @ParameterizedTest
    @CsvSource({"10, WATCH, 95.0°", "59, WATCH, 119.5°", "61, POOR, 120.5°"})
    void theAngleOfATriangleCountsAsThatOfTheLegsThatPullAsHard(double degrees, RigVerdict verdict, String legs) {
        RigDraft triangle = stiff(degrees, 0).withRig(SetupDraft.of(RigKind.LOOP, 0, 0, 0, 100_000));
        LetterCheck check = check(triangle, CheckLetter.A);

        assertThat(check.verdict()).isEqualTo(verdict);
        assertThat(check.figure().orElseThrow()).isCloseTo(degrees, within(0.01));
        assertThat(check.why()).contains("as hard as two legs at " + legs);
    }

    @Test
    void equalSharesAreGoodAndSayTheirNumbers() {
        LetterCheck check = check(stiff(60, 0), CheckLetter.E);

        assertThat(check.verdict()).isEqualTo(RigVerdict.GOOD);
        assertThat(check.figure().orElseThrow()).isCloseTo(0.5, within(1e-6));
        assertThat(check.why()).contains("A carries 50 %").contains("B 50 %").contains("40 % to 60 %");
    }

    @Test
    void aPairThatIsEvenAtTheAimIsJudgedByItsWholeSector() {
        // Legs at 30 degrees to either side: shares are sin(30 + d) to sin(30 - d), 63 to 37 % at d = 9 degrees.
        LetterCheck narrow = check(stiff(60, 4), CheckLetter.E);
        LetterCheck middle = check(stiff(60, 9), CheckLetter.E);
        LetterCheck wide = check(stiff(60, 25), CheckLetter.E);

        assertThat(narrow.verdict()).isEqualTo(RigVerdict.GOOD);
        assertThat(middle.verdict()).isEqualTo(RigVerdict.WATCH);
        double share = Math.sin(Math.toRadians(39)) / (Math.sin(Math.toRadians(39)) + Math.sin(Math.toRadians(21)));
        assertThat(middle.figure().orElseThrow()).isCloseTo(share, within(1e-4));
        assertThat(middle.why()).contains("with the load at -9.0°, where B carries 64 % and A 36 %");
        assertThat(wide.verdict()).isEqualTo(RigVerdict.POOR);
    }

    @Test
    void aPointThatHangsSlackIsNamedAndPoor() {
        RigDraft stack = stiff(60, 0).withPoints(List.of(PointDraft.of("A", 0, 0.5, 0), PointDraft.of("B", 0, 1, 0)));
        LetterCheck check = check(stack.withRig(stack.rig().withSlack(Map.of("B", 0.1))), CheckLetter.E);

        assertThat(check.verdict()).isEqualTo(RigVerdict.POOR);
        assertThat(check.why()).contains("A carries 100 % and B hangs slack");
    }

    @Test
    void onePointHasNothingToEqualiseAndNoAngle() {
        RigDraft single = new RigDraft(
                "",
                List.of(PointDraft.of("beech", 0, 0, 0)),
                LoadDraft.ofMass(90, 0, 20),
                SetupDraft.of(RigKind.SINGLE, 0, -0.5, 0, 70));

        RigAnswer answer = Rigs.answer(single);

        assertThat(answer.steady().at("beech").share()).isEqualTo(1);
        assertThat(answer.sector().worstOf("beech").force().newtons()).isCloseTo(90 * 9.80665, within(1e-9));
        assertThat(answer.sector().worstOf("beech").direction().degrees()).isZero();
        assertThat(answer.sector().widest()).isEmpty();
        assertThat(answer.checks())
                .extracting(LetterCheck::verdict)
                .containsExactly(
                        RigVerdict.UNKNOWN,
                        RigVerdict.UNKNOWN,
                        RigVerdict.POOR,
                        RigVerdict.UNKNOWN,
                        RigVerdict.UNKNOWN,
                        RigVerdict.GOOD);
        assertThat(check(single, CheckLetter.E).why()).contains("beech is the only point");
        assertThat(check(single, CheckLetter.A).figure()).isEmpty();
    }

    @Test
    void everyAnswerCarriesItsCautionsAndAssumptions() {
        RigAnswer answer = Rigs.answer(stiff(60, 0));

        assertThat(RigCaution.of(answer))
                .containsExactly(
                        RigCaution.TRAINING,
                        RigCaution.MODEL,
                        RigCaution.STEADY_ONLY,
                        RigCaution.PEAK,
                        RigCaution.SWING,
                        RigCaution.UNSEEN,
                        RigCaution.STRENGTH_UNKNOWN);
        assertThat(RigCaution.of(Rigs.answer(stiff(150, 0)))).contains(RigCaution.FLAT);
        RigDraft alone = Rigs.focused(List.of(PointDraft.of("A", 0, 1, 0)), Vector3.ZERO, 1, 0, 0);
        assertThat(RigCaution.of(Rigs.answer(alone))).doesNotContain(RigCaution.PEAK, RigCaution.SWING);
        assertThat(RigAssumption.of(answer))
                .containsExactlyElementsOf(EnumSet.complementOf(EnumSet.of(RigAssumption.FACTOR)));
        RigDraft lowered = stiff(60, 0);
        assertThat(RigAssumption.of(Rigs.answer(lowered.withLoad(lowered.load().withFactor(1.5)))))
                .containsExactly(RigAssumption.values());
        assertThat(answer.assumed()).contains("strands");
    }

    @Test
    void aKnownStrengthAndNoDefaultsTakeTheirLinesAway() {
        RigInput input = Rigs.input(stiff(60, 0));
        RigInput known = new RigInput(
                "",
                input.points().stream()
                        .map(point -> new RigPoint(
                                point.name(), point.at(), Optional.of(Force.kilonewtons(20)), 0.25, Optional.of(true)))
                        .toList(),
                input.load(),
                input.rig(),
                List.of());

        assertThat(RigCaution.of(Analyze.of(known))).doesNotContain(RigCaution.STRENGTH_UNKNOWN);
        assertThat(RigAssumption.of(Analyze.of(known))).doesNotContain(RigAssumption.DEFAULTS);
    }
}
