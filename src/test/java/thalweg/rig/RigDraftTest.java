package thalweg.rig;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class RigDraftTest {

    private static final OptionalDouble NONE = OptionalDouble.empty();
    private static final PointDraft LEFT = PointDraft.of("A", -0.3, 0, 0);
    private static final PointDraft RIGHT = PointDraft.of("B", 0.3, 0.1, 0.05);
    private static final SetupDraft SETUP = SetupDraft.of(RigKind.FOCUSED, 0, -0.6, 0, 70);
    private static final RigDraft SOUND =
            new RigDraft("demo", List.of(LEFT, RIGHT), LoadDraft.ofMass(90, 0, 15), SETUP);

    private static void assertRefused(RigDraft draft, String key, String part) {
        CheckedRig checked = draft.check();
        assertThat(checked.input()).isEmpty();
        assertThat(checked.findings()).anySatisfy(finding -> {
            assertThat(finding.key()).isEqualTo(key);
            assertThat(finding.sentence()).contains(part);
        });
    }

    private static RigDraft withPoint(PointDraft point) {
        return SOUND.withPoints(List.of(LEFT, point));
    }

    private static RigDraft with(RigKind kind, int points) {
        List<PointDraft> many = new ArrayList<>();
        for (int i = 0; i < points; i++) {
            many.add(PointDraft.of("P" + i, i, 1, 0));
        }
        return new RigDraft("", many, SOUND.load(), SetupDraft.of(kind, 0, 0, 0, 70));
    }

    private static SetupDraft setup(double stiffness, long strands, double strand, double efficiency) {
        return new SetupDraft(
                Optional.of(RigKind.FOCUSED),
                List.of(0.0, -0.6),
                OptionalDouble.of(stiffness),
                OptionalLong.of(strands),
                Map.of(),
                Optional.empty(),
                NONE,
                LimitDraft.NONE,
                OptionalDouble.of(strand),
                OptionalDouble.of(efficiency));
    }

    private static LoadDraft load(double toward, double sway, double lean, double rope, double spread) {
        return new LoadDraft(
                OptionalDouble.of(90),
                NONE,
                OptionalDouble.of(toward),
                OptionalDouble.of(sway),
                OptionalDouble.of(lean),
                OptionalDouble.of(rope),
                OptionalDouble.of(40),
                OptionalDouble.of(spread));
    }

    @Test
    void aSoundDraftIsARigThatKnowsItsDefaults() {
        RigInput input = Rigs.input(SOUND);

        assertThat(input.assumed()).containsExactly("spread", "lean_out_deg", "rope_out_m", "load_spread", "strands");
        assertThat(input.rig().strands()).isEqualTo(2);
        assertThat(input.points().get(0).spread()).isEqualTo(0.25);
        assertThat(input.points().get(0).strength()).isEmpty();
        assertThat(input.points().get(0).holdsAlone()).isEmpty();
        assertThat(input.load().weight().newtons()).isEqualTo(90 * 9.80665);
        assertThat(input.load().spread()).isEqualTo(0.2);
    }

    @Test
    void whatIsStatedIsNotAssumed() {
        RigDraft draft = SOUND.withLoad(load(5, 10, 0, 2, 0.1)).withRig(setup(70, 1, 17.8, 0.64));

        assertThat(Rigs.input(draft).assumed()).containsExactly("spread");
    }

    @Test
    void aRigGivesItsDraftBack() {
        RigDraft slack = SOUND.withRig(SETUP.withSlack(Map.of("B", 0.1)));

        assertThat(RigDraft.of(Rigs.input(slack))).isEqualTo(slack);
        assertThat(Rigs.input(RigDraft.of(Rigs.input(slack)))).isEqualTo(Rigs.input(slack));
    }

    @Test
    void allFindingsComeAtOnceInTheOrderOfTheFile() {
        RigDraft draft = new RigDraft(
                "",
                List.of(new PointDraft("", List.of(), NONE, NONE, Optional.empty()), LEFT, LEFT),
                LoadDraft.ofForce(-1, 500, 0),
                SetupDraft.of(RigKind.FOCUSED, -0.3, 0, 0, 0));

        assertThat(draft.check().findings())
                .extracting(RigFinding::key)
                .containsExactly(
                        "points[0].name",
                        "points[0].at",
                        "points[2].name",
                        "points[2].at",
                        "load.force_kN",
                        "load.toward_deg",
                        "rig.focus",
                        "rig.focus",
                        "rig.EA_kN");
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
    void numbersThatAreNotFiniteAreRefusedByName(double number) {
        String finite = "finite";
        assertRefused(withPoint(PointDraft.of("B", number, 0, 0)), "points[1].at", finite);
        assertRefused(SOUND.withLoad(LoadDraft.ofMass(number, 0, 0)), "load.mass_kg", finite);
        assertRefused(SOUND.withLoad(LoadDraft.ofForce(number, 0, 0)), "load.force_kN", finite);
        assertRefused(SOUND.withLoad(SOUND.load().withToward(number)), "load.toward_deg", finite);
        assertRefused(SOUND.withLoad(SOUND.load().withSway(number)), "load.sway_deg", finite);
        assertRefused(SOUND.withLoad(load(0, 0, 0, number, 0)), "load.rope_out_m", finite);
        assertRefused(SOUND.withRig(SetupDraft.of(RigKind.FOCUSED, 0, number, 0, 70)), "rig.focus", finite);
        assertRefused(SOUND.withRig(SETUP.withSlack(Map.of("A", number))), "rig.slack_m.A", finite);
    }

    @ParameterizedTest
    @CsvSource({"-1, negative", "0, above 0", "1e6, at most 1000"})
    void strengthsOutOfRangeAreRefused(double kilonewtons, String reason) {
        PointDraft point =
                new PointDraft("B", List.of(0.3, 0.0), OptionalDouble.of(kilonewtons), NONE, Optional.empty());

        assertRefused(withPoint(point), "points[1].strength_kN", reason);
        assertRefused(SOUND.withRig(setup(70, 2, kilonewtons, 0.6)), "rig.strand_kN", reason);
    }

    @Test
    void negativeLengthsAndSpreadsAreRefused() {
        PointDraft spread = new PointDraft("B", List.of(0.3, 0.0), NONE, OptionalDouble.of(-0.1), Optional.of(true));

        assertRefused(withPoint(spread), "points[1].spread", "negative");
        assertRefused(SOUND.withLoad(load(0, 0, 0, -1, 0.2)), "load.rope_out_m", "negative");
        assertRefused(SOUND.withLoad(load(0, 0, 0, 0, -0.2)), "load.load_spread", "negative");
        assertRefused(SOUND.withLoad(load(0, -1, 0, 0, 0.2)), "load.sway_deg", "negative");
        assertRefused(SOUND.withRig(SETUP.withSlack(Map.of("B", -0.01))), "rig.slack_m.B", "negative");
    }

    @Test
    void anglesStiffnessStrandsAndEfficiencyOutOfRangeAreRefused() {
        assertRefused(SOUND.withLoad(load(181, 0, 0, 0, 0.2)), "load.toward_deg", "at most 180");
        assertRefused(SOUND.withLoad(load(0, 91, 0, 0, 0.2)), "load.sway_deg", "at most 90");
        assertRefused(SOUND.withLoad(load(0, 0, -91, 0, 0.2)), "load.lean_out_deg", "at least -90");
        assertRefused(SOUND.withRig(setup(0, 2, 10, 0.6)), "rig.EA_kN", "at least 0.1");
        assertRefused(SOUND.withRig(setup(70, 0, 10, 0.6)), "rig.strands", "at least 1");
        assertRefused(SOUND.withRig(setup(70, 25, 10, 0.6)), "rig.strands", "at most 24");
        assertRefused(SOUND.withRig(setup(70, 2, 10, 1.01)), "rig.knot_efficiency", "at most 1");
        assertRefused(SOUND.withRig(setup(70, 2, 10, 0)), "rig.knot_efficiency", "above 0");
        assertRefused(SOUND.withLoad(LoadDraft.ofMass(0, 0, 0)), "load.mass_kg", "at least 0.001");
    }

    @Test
    void placesThatCoincideAreRefused() {
        assertRefused(withPoint(PointDraft.of("B", -0.3, 0.0005, 0)), "points[1].at", "place of point A");
        assertRefused(SOUND.withRig(SetupDraft.of(RigKind.FOCUSED, 0.3, 0.1, 0.05, 70)), "rig.focus", "point B");
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 4})
    void aPlaceHasTwoOrThreeNumbers(int count) {
        PointDraft point = new PointDraft("B", Collections.nCopies(count, 1.0), NONE, NONE, Optional.empty());

        assertRefused(withPoint(point), "points[1].at", "two or three");
    }

    @Test
    void aPlaceOfTwoNumbersLiesInTheWall() {
        PointDraft flat = new PointDraft("B", List.of(0.3, 0.1), NONE, NONE, Optional.empty());

        assertThat(Rigs.input(withPoint(flat)).points().get(1).at()).isEqualTo(new Vector3(0.3, 0.1, 0));
    }

    @Test
    void namesThatAreMissingLongOrDoubledAreRefused() {
        assertRefused(withPoint(PointDraft.of(" ", 1, 0, 0)), "points[1].name", "missing");
        assertRefused(withPoint(PointDraft.of("x".repeat(41), 1, 0, 0)), "points[1].name", "longer");
        assertRefused(withPoint(PointDraft.of("A", 1, 0, 0)), "points[1].name", "another point");
        assertRefused(SOUND.withRig(SETUP.withSlack(Map.of("C", 0.1))), "rig.slack_m.C", "no point");
    }

    @Test
    void aLoadIsStatedOnce() {
        OptionalDouble some = OptionalDouble.of(1);
        assertRefused(SOUND.withLoad(new LoadDraft(some, some, some, NONE, NONE, NONE, NONE, NONE)), "load", "both");
        assertRefused(SOUND.withLoad(new LoadDraft(NONE, NONE, some, NONE, NONE, NONE, NONE, NONE)), "load", "neither");
    }

    @Test
    void aLoadFactorIsOneToTen() {
        assertRefused(SOUND.withLoad(SOUND.load().withFactor(0.9)), "load.factor", "at least 1 ");
        assertRefused(SOUND.withLoad(SOUND.load().withFactor(11)), "load.factor", "at most 10");
        assertThat(Rigs.input(SOUND).load().factor()).isEqualTo(1);
        assertThat(Rigs.input(SOUND).assumed()).doesNotContain("factor");
    }

    @Test
    void whatHasNoDefaultIsAskedFor() {
        OptionalDouble some = OptionalDouble.of(1);
        assertRefused(
                SOUND.withLoad(new LoadDraft(some, NONE, NONE, NONE, NONE, NONE, NONE, NONE)),
                "load.toward_deg",
                "missing");
        assertRefused(
                SOUND.withLoad(new LoadDraft(some, NONE, some, NONE, NONE, some, NONE, NONE)),
                "load.rope_EA_kN",
                "missing");
        SetupDraft empty = new SetupDraft(
                Optional.empty(),
                List.of(),
                NONE,
                OptionalLong.empty(),
                Map.of(),
                Optional.empty(),
                NONE,
                LimitDraft.NONE,
                NONE,
                NONE);
        assertRefused(SOUND.withRig(empty), "rig.kind", "single, focused");
        assertRefused(SOUND.withRig(empty), "rig.focus", "missing");
        assertRefused(SOUND.withRig(empty), "rig.EA_kN", "missing");
    }

    @ParameterizedTest
    @CsvSource({
        "SINGLE, 0",
        "SINGLE, 2",
        "FOCUSED, 0",
        "FOCUSED, 7",
        "LIMITED, 1",
        "LIMITED, 3",
        "LOOP, 3",
        "SLIDING, 7"
    })
    void aWrongNumberOfPointsIsRefused(RigKind kind, int points) {
        assertRefused(with(kind, points), "points", kind.word() + " takes ");
    }

    @ParameterizedTest
    @CsvSource({"SINGLE, 1", "FOCUSED, 1", "FOCUSED, 6", "SLIDING, 1", "SLIDING, 6", "LOOP, 2"})
    void aRightNumberOfPointsIsTaken(RigKind kind, int points) {
        assertThat(with(kind, points).check().findings()).isEmpty();
    }

    @Test
    void keysOfOtherKindsAreRefusedAndSayWhereTheyBelong() {
        SetupDraft foreign = new SetupDraft(
                Optional.of(RigKind.FOCUSED),
                List.of(0.0, -0.6),
                OptionalDouble.of(70),
                OptionalLong.empty(),
                Map.of(),
                Optional.of(true),
                OptionalDouble.of(0.1),
                LimitDraft.at(0.1, 0.1),
                NONE,
                NONE);
        assertRefused(SOUND.withRig(foreign), "rig.captured", "belongs to: sliding");
        assertRefused(SOUND.withRig(foreign), "rig.friction", "belongs to: sliding, limited");
        assertRefused(SOUND.withRig(foreign), "rig.limit_m", "belongs to: limited");
        RigDraft single = with(RigKind.SINGLE, 1);
        assertRefused(single.withRig(single.rig().withSlack(Map.of("P0", 0.1))), "rig.slack_m", "belongs to: focused");
    }
}
