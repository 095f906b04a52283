package thalweg.rig;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Whether what is left after a loss is strong enough, and the letters R, NE and S that rest on it. */
class StrengthTest {

    private static final OptionalDouble NONE = OptionalDouble.empty();

    private static PointDraft point(String name, double x, double strength, Optional<Boolean> alone) {
        OptionalDouble known = strength > 0 ? OptionalDouble.of(strength) : NONE;
        return new PointDraft(name, List.of(x, 0.5, 0.0), known, NONE, alone);
    }

    /** Two points 0.5 m above the master and 0.4 m apart, which peaks below 1.5 kN. */
    private static RigDraft pair(double strengthOfA, double strengthOfB) {
        return Rigs.focused(
                List.of(
                        point("A", -0.2, strengthOfA, Optional.empty()),
                        point("B", 0.2, strengthOfB, Optional.empty())),
                Vector3.ZERO,
                0.9,
                0,
                10);
    }

    private static RigDraft tied(RigDraft draft, double strand) {
        return draft.withRig(draft.rig().withStrength(strand, 0.5));
    }

    private static WithinStrength strength(RigDraft draft, String lost) {
        return Rigs.answer(draft).losses().stream()
                .filter(loss -> loss.point().equals(lost))
                .findFirst()
                .flatMap(PointLoss::aftermath)
                .orElseThrow()
                .within();
    }

    private static LetterCheck check(RigDraft draft, CheckLetter letter) {
        return Rigs.answer(draft).checks().stream()
                .filter(check -> check.letter() == letter)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void everythingKnownAndStrongIsWithinItsStrength() {
        WithinStrength within = strength(tied(pair(20, 12), 18), "A");

        assertThat(within.verdict()).contains(true);
        assertThat(within.why())
                .contains("The weakest part: B is stated to hold ")
                .doesNotContain("kN");
        assertThat(within.ratio().orElseThrow()).isBetween(8.0, 12.0);
    }

    @Test
    void aPointThatIsTooWeakIsNamedEvenWhereOtherStrengthsAreUnknown() {
        WithinStrength within = strength(pair(20, 1), "A");

        assertThat(within.verdict()).contains(false);
        assertThat(within.why()).contains("Too weak: B is stated to hold 0.");
    }

    @Test
    void anUnknownStrengthIsNoYes() {
        assertThat(strength(tied(pair(20, 0), 18), "A").verdict()).isEmpty();
        assertThat(strength(tied(pair(20, 0), 18), "A").why()).contains("the strength of B.");
        assertThat(strength(pair(20, 20), "A").verdict()).isEmpty();
        assertThat(strength(pair(20, 20), "A").why()).contains("the strength of the B leg.");
    }

    @Test
    void theStrengthOfThePointThatIsLostDoesNotMatter() {
        assertThat(strength(tied(pair(0, 20), 18), "A").verdict()).contains(true);
    }

    @Test
    void aStrandCountsWithWhatItsKnotsLeave() {
        // Two strands share the peak of some 1.2 kN.
        assertThat(strength(tied(pair(20, 20), 1.1), "A").verdict()).contains(false);
        assertThat(strength(tied(pair(20, 20), 1.1), "A").why()).contains("the B leg");
        assertThat(strength(tied(pair(20, 20), 1.6), "A").verdict()).contains(true);
    }

    @Test
    void aStrandThatIsTooWeakWithoutAnyKnotIsTooWeak() {
        RigDraft draft = pair(20, 20);
        SetupDraft rig = draft.rig();
        SetupDraft withoutKnots = new SetupDraft(
                rig.kind(),
                rig.focus(),
                rig.stiffnessKilonewtons(),
                rig.strands(),
                rig.slackMetres(),
                rig.captured(),
                rig.friction(),
                rig.limits(),
                OptionalDouble.of(0.4),
                NONE);

        assertThat(strength(draft.withRig(withoutKnots), "A").verdict()).contains(false);
    }

    /** A fall of more than 2 s: nothing has pulled yet, so nothing says that what is left would hold. */
    @Test
    void aLoadThatStillFallsAfterTheTimeThatIsFollowedIsNotWithinStrength() {
        RigDraft deep = Rigs.focused(
                        List.of(PointDraft.of("A", 0, 0, 0), PointDraft.of("B", 0, 60, 0)),
                        new Vector3(0, -1, 0),
                        0.9,
                        0,
                        0)
                .withRig(SetupDraft.of(RigKind.SLIDING, 0, -1, 0, 70).withStrength(20, 0.6));
        RigAnswer answer = Rigs.answer(deep);
        Aftermath after = answer.losses().get(1).aftermath().orElseThrow();

        assertThat(after.freeTravel().metres()).isGreaterThan(20);
        assertThat(after.peaks().orElseThrow().rising()).isTrue();
        assertThat(after.within().verdict()).isEmpty();
        assertThat(after.within().why()).contains("still rises");
        assertThat(answer.checks().get(2).verdict()).isNotEqualTo(RigVerdict.GOOD);
    }

    @Test
    void aMotionThatCannotBeFollowedHasNoPeakAndAReason() {
        RigDraft draft = pair(20, 20)
                .withLoad(LoadDraft.ofForce(1e-5, 0, 0))
                .withRig(SetupDraft.of(RigKind.FOCUSED, 0, 0, 0, 100_000));
        Aftermath after = Rigs.answer(draft).losses().get(0).aftermath().orElseThrow();

        assertThat(after.peaks()).isEmpty();
        assertThat(after.within().verdict()).isEmpty();
        assertThat(after.within().why()).contains("could not be followed");
        assertThat(after.drop().metres()).isPositive();
    }

    @Test
    void aPullThatStillRisesHasNoPeakYet() {
        RigDraft draft = tied(pair(20, 20), 18);
        LoadDraft load = draft.load();
        RigDraft longRope = draft.withLoad(new LoadDraft(
                load.massKilograms(),
                load.forceKilonewtons(),
                load.towardDegrees(),
                load.swayDegrees(),
                load.leanOutDegrees(),
                OptionalDouble.of(200),
                OptionalDouble.of(10),
                NONE));

        assertThat(strength(longRope, "A").verdict()).isEmpty();
        assertThat(strength(longRope, "A").why()).contains("still rises");
    }

    @Test
    void redundantIsGoodOnlyWithThreeTimesThePeak() {
        assertThat(check(tied(pair(20, 20), 18), CheckLetter.R).verdict()).isEqualTo(RigVerdict.GOOD);
        assertThat(check(tied(pair(20, 3), 18), CheckLetter.R).verdict()).isEqualTo(RigVerdict.WATCH);
        assertThat(check(tied(pair(20, 3), 18), CheckLetter.R).why()).contains("two to three times that peak");
        assertThat(check(tied(pair(20, 1), 18), CheckLetter.R).verdict()).isEqualTo(RigVerdict.POOR);
        assertThat(check(pair(20, 20), CheckLetter.R).verdict()).isEqualTo(RigVerdict.UNKNOWN);
        assertThat(check(tied(pair(0, 20), 18), CheckLetter.R).verdict()).isEqualTo(RigVerdict.UNKNOWN);
        assertThat(check(tied(pair(20, 20), 18), CheckLetter.R).figure().orElseThrow())
                .isEqualTo(1);
    }

    @Test
    void aLoopIsNotRedundantBecauseOneCutLosesEverything() {
        RigDraft sliding =
                pair(20, 20).withRig(SetupDraft.of(RigKind.SLIDING, 0, 0, 0, 70).withStrength(18, 0.5));
        LetterCheck check = check(sliding, CheckLetter.R);

        assertThat(check.verdict()).isEqualTo(RigVerdict.POOR);
        assertThat(check.why())
                .contains("a cut of the sliding loop", "Held: 2 of 3")
                .doesNotContain("loss of A");
        assertThat(check.figure().orElseThrow()).isCloseTo(2.0 / 3, within(1e-12));
        LetterCheck released = check(sliding.withRig(sliding.rig().withSliding(false, 0.2)), CheckLetter.R);
        assertThat(released.why()).contains("the loss of A, the loss of B or a cut of the sliding loop");
        assertThat(released.figure().orElseThrow()).isZero();
    }

    @Test
    void extensionIsJudgedByTheFarthestDrop() {
        LetterCheck near = check(pair(20, 20), CheckLetter.NE);
        LetterCheck falls = check(pair(20, 20).withRig(SetupDraft.of(RigKind.SLIDING, 0, 0, 0, 70)), CheckLetter.NE);
        RigDraft small = Rigs.focused(
                        List.of(PointDraft.of("A", -0.1, 0, 0), PointDraft.of("B", 0.1, 0, 0)),
                        new Vector3(0, -0.15, 0),
                        0.9,
                        0,
                        0)
                .withRig(SetupDraft.of(RigKind.SLIDING, 0, -0.15, 0, 70));

        assertThat(near.verdict()).isEqualTo(RigVerdict.GOOD);
        assertThat(near.why()).contains("The master drops farthest when A goes").contains("swing of 0.2");
        assertThat(falls.verdict()).isEqualTo(RigVerdict.POOR);
        assertThat(falls.figure().orElseThrow()).isGreaterThan(0.5);
        assertThat(falls.why()).contains("in free fall").contains("past the 0.30 m (1.0 ft)");
        assertThat(check(small, CheckLetter.NE).verdict()).isEqualTo(RigVerdict.WATCH);
        assertThat(check(small, CheckLetter.NE).why()).contains("It falls before a strand holds again");
    }

    @Test
    void whereNothingIsLeftThereIsNoExtensionToJudge() {
        RigDraft sliding =
                pair(20, 20).withRig(SetupDraft.of(RigKind.SLIDING, 0, 0, 0, 70).withSliding(false, 0.2));

        assertThat(check(sliding, CheckLetter.NE).verdict()).isEqualTo(RigVerdict.UNKNOWN);
        assertThat(check(sliding, CheckLetter.NE).figure()).isEmpty();
    }

    @Test
    void solidRestsOnEveryStatedStrength() {
        assertThat(check(pair(20, 12), CheckLetter.S).verdict()).isEqualTo(RigVerdict.GOOD);
        assertThat(check(pair(20, 12), CheckLetter.S).figure().orElseThrow()).isCloseTo(12 / 0.9, within(1e-9));
        assertThat(check(pair(20, 12), CheckLetter.S).why())
                .contains("B is stated")
                .contains("no look at the rock");
        assertThat(check(pair(20, 5), CheckLetter.S).verdict()).isEqualTo(RigVerdict.WATCH);
        assertThat(check(pair(20, 2), CheckLetter.S).verdict()).isEqualTo(RigVerdict.POOR);
        assertThat(check(pair(20, 0), CheckLetter.S).verdict()).isEqualTo(RigVerdict.UNKNOWN);
        assertThat(check(pair(2, 0), CheckLetter.S).verdict()).isEqualTo(RigVerdict.POOR);
        assertThat(check(pair(0, 0), CheckLetter.S).figure()).isEmpty();
    }

    @Test
    void aPointThatNobodyBelievesInIsNotSolid() {
        RigDraft doubted = pair(20, 20)
                .withPoints(List.of(point("A", -0.2, 20, Optional.of(false)), point("B", 0.2, 20, Optional.of(true))));

        assertThat(check(doubted, CheckLetter.S).verdict()).isEqualTo(RigVerdict.WATCH);
        assertThat(check(doubted, CheckLetter.S).why()).contains("Not believed to hold the load alone: A.");
    }

    @Test
    void aTriangleIsHeldAgainstWhatItAddsToTheLoad() {
        RigDraft flat = Rigs.focused(
                        List.of(point("A", -0.6, 20, Optional.empty()), point("B", 0.6, 20, Optional.empty())),
                        new Vector3(0, 0.35, 0),
                        0.9,
                        0,
                        0)
                .withRig(SetupDraft.of(RigKind.LOOP, 0, 0.35, 0, 70));
        double worst = Rigs.answer(flat).sector().worstOf("A").force().inKilonewtons();

        assertThat(worst).isGreaterThan(0.9);
        assertThat(check(flat, CheckLetter.S).figure().orElseThrow()).isCloseTo(20 / worst, within(1e-6));
    }
}
