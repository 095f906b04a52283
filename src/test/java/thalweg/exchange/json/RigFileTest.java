package thalweg.exchange.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import thalweg.fault.InputException;
import thalweg.json.Json;
import thalweg.json.JsonDocument;
import thalweg.rig.Analyze;
import thalweg.rig.RigInput;
import thalweg.rig.RigStudy;

final class RigFileTest {

    private static final String TWO_POINTS = """
            {
              "name": "two",
              "points": [
                {"name": "A", "at": [-0.30, 0.00], "strength_kN": 20, "spread": 0.25, "holds_alone": true},
                {"name": "B", "at": [0.30, 0.10, 0.05], "strength_kN": 12}
              ],
              "load": {"mass_kg": 90, "toward_deg": 0, "sway_deg": 15, "load_spread": 0.2},
              "rig": {"kind": "focused", "focus": [0, -0.6], "EA_kN": 70, "strands": 2,
                      "slack_m": {"B": 0.02}, "strand_kN": 17.8, "knot_efficiency": 0.64}
            }
            """;

    private static Json.Fields answer(String text) {
        String json = RigAnswerText.write(RigStudy.of(Analyze.of(RigFile.read("the rig", text))));
        return (Json.Fields) JsonDocument.read("the answer", json).root();
    }

    private static Json at(Json value, String... path) {
        Json found = value;
        for (String key : path) {
            found = found instanceof Json.Items items
                    ? items.values().get(Integer.parseInt(key))
                    : ((Json.Fields) found).field(key).orElseThrow();
        }
        return found;
    }

    private static double number(Json value, String... path) {
        return ((Json.Decimal) at(value, path)).value().doubleValue();
    }

    @Test
    void whatIsWrittenReadsBackAsTheSameRig() {
        RigInput rig = RigFile.read("the rig", TWO_POINTS);

        assertThat(RigFile.read("the copy", RigFile.write(rig))).isEqualTo(rig);
    }

    @Test
    void whatWasAssumedStaysAssumed() {
        RigInput rig = RigFile.read("the rig", TWO_POINTS);

        assertThat(rig.assumed())
                .contains("spread", "lean_out_deg", "rope_out_m")
                .doesNotContain("load_spread");
        assertThat(RigFile.read("the copy", RigFile.write(rig)).assumed()).isEqualTo(rig.assumed());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            "mass_kg": 90          | "mass_kg": 90, "force_kN": 1 | mass_kg
            "mass_kg": 90          | "mass_kg": -1                | load.mass_kg
            "mass_kg": 90          | "mas_kg": 90                 | mas_kg
            "name": "B"            | "name": "A"                  | points[1].name
            [0.30, 0.10, 0.05]     | [-0.30, 0.00]                | points[1]
            [0.30, 0.10, 0.05]     | [0.30]                       | points[1].at
            [0, -0.6]              | [-0.30, 0.00]                | rig.focus
            "kind": "focused"      | "kind": "sliding"            | single, focused
            "kind": "focused"      | "kind": "single"             | single
            "kind": "focused"      | "kind": "knotted"            | kind
            "strands": 2           | "friction": 0.2              | friction
            "strand_kN": 17.8      | "strand_kN": 0               | rig.strand_kN
            "EA_kN": 70            | "EA_kN": "70"                | EA_kN
            "sway_deg": 15         | "sway_deg": -15              | load.sway_deg
            {"B": 0.02}            | {"C": 0.02}                  | slack_m
            {"B": 0.02}            | {"B": -0.02}                 | slack_m
            """)
    void whatCannotBeComputedIsRefusedWithItsKey(String right, String wrong, String named) {
        String text = TWO_POINTS.replace(right, wrong);

        assertThat(text).isNotEqualTo(TWO_POINTS);
        assertThatThrownBy(() -> RigFile.read("the rig", text))
                .isInstanceOf(InputException.class)
                .hasMessageStartingWith("the rig is no rig that can be computed: ")
                .hasMessageContaining(named);
    }

    private static final String TRAITS = TWO_POINTS
            .replace("\"strength_kN\": 20", "\"radial_kN\": 25, \"axial_kN\": 15, \"axis\": [0.3, 0, 0.9]")
            .replace(
                    "\"strength_kN\": 12",
                    "\"strength_kN\": 12, \"condition\": \"worn\","
                            + " \"connector\": {\"strength_kN\": 20, \"across_kN\": 7, \"loaded\": \"across\"}")
            .replace(
                    "\"knot_efficiency\": 0.64",
                    "\"knot\": \"water_knot\", \"condition\": \"unknown\", \"strand_fibre\": \"nylon\","
                            + " \"strand_age_years\": 2.5, \"strand_kept\": \"outdoors\","
                            + " \"connector\": {\"strength_kN\": 25}, \"derating\": {\"worn\": 0.7, \"age\": 0.6}");

    @Test
    void whatIsStatedOfConditionKnotAgeBoltsAndConnectorsReadsBackAsTheSame() {
        RigInput rig = RigFile.read("the rig", TRAITS);

        assertThat(rig.assumed()).contains("loaded").doesNotContain("axis");
        assertThat(RigFile.read("the copy", RigFile.write(rig))).isEqualTo(rig);
        assertThat(RigFile.write(rig)).contains("\"knot\": \"water_knot\"").doesNotContain("knot_efficiency");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            "radial_kN": 25,      | "strength_kN": 25, "radial_kN": 25, | points[0]: states strength_kN beside
            "radial_kN": 25,      | ''                                  | points[0]: states only a part
            "axial_kN": 15        | "axial_kN": -15                     | points[0].axial_kN
            [0.3, 0, 0.9]         | [0, 0, 0]                           | points[0].axis: is no direction
            [0.3, 0, 0.9]         | [0.3, 0.9]                          | points[0].axis: has 2 numbers
            "condition": "worn"   | "condition": "gone"                 | points[1].condition: is gone
            "condition": "worn"   | "condition": "rusty"                | sound, worn, doubtful
            "across_kN": 7        | "across_kN": 0                      | points[1].connector.across_kN
            "across_kN": 7        | "acros_kN": 7                       | acros_kN
            "loaded": "across"    | "loaded": "sideways"                | long, across, open
            "knot": "water_knot"  | "knot": "water_knot", "knot_efficiency": 0.5 | rig.knot: stands beside
            "knot": "water_knot"  | "knot": "granny"                    | girth_hitch
            "strand_age_years": 2.5 | "strand_age_years": -1            | rig.strand_age_years
            "strand_fibre": "nylon" | "strand_fibre": "hemp"            | nylon, polyester, uhmwpe
            "age": 0.6            | "age": 1.6                          | rig.derating.age
            "age": 0.6            | "rust": 0.6                         | rig.derating.rust
            """)
    void whatMakesNoSenseOfThemIsRefusedWithItsKey(String right, String wrong, String named) {
        String text = TRAITS.replace(right, wrong);

        assertThat(text).isNotEqualTo(TRAITS);
        assertThatThrownBy(() -> RigFile.read("the rig", text))
                .isInstanceOf(InputException.class)
                .hasMessageContaining(named);
    }

    @Test
    void safetySaysWhatWasTakenOffEachStrength() {
        Json strength = at(answer(TRAITS), "safety", "B", "strength");

        assertThat(number(strength, "stated_kN")).isEqualTo(12);
        assertThat(number(strength, "kN")).isEqualTo(8.4);
        assertThat(number(strength, "factors", "0", "share")).isEqualTo(0.7);
        assertThat(at(strength, "factors", "0", "source")).isEqualTo(Json.of("stated"));
    }

    private static final String SLUNG = TWO_POINTS.replace(
            "\"strength_kN\": 12}",
            "\"is\": \"tree\", \"sling\": {\"tie\": \"basket\", \"width_m\": 0.3, \"around_m\": 1.1,"
                    + " \"reach_m\": 0.25, \"EA_kN\": 110, \"strand_kN\": 17.8, \"knot_efficiency\": 0.64}}");

    @Test
    void aSlingReadsBackAsTheSame() {
        RigInput rig = RigFile.read("the rig", SLUNG);
        RigInput bare = RigFile.read(
                "the rig",
                SLUNG.replace(
                        ", \"around_m\": 1.1, \"reach_m\": 0.25, \"EA_kN\": 110, \"strand_kN\": 17.8,"
                                + " \"knot_efficiency\": 0.64",
                        ""));

        assertThat(RigFile.read("the copy", RigFile.write(rig))).isEqualTo(rig);
        assertThat(RigFile.read("the copy", RigFile.write(bare))).isEqualTo(bare);
        assertThat(bare.assumed()).contains("sling_EA_kN");
        assertThat(bare.points().get(1).sling().orElseThrow().reach()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            "basket"            | "loop"              | sling.tie: is "loop"
            "tie": "basket",    | ''                  | points[1].sling.tie: is missing; it is one of: basket
            "width_m": 0.3,     | ''                  | points[1].sling.width_m: is missing
            "width_m": 0.3      | "width_m": -0.3     | points[1].sling.width_m: is -0.3 m
            "around_m": 1.1     | "around_m": 0.5     | less than there and back across its own width
            "reach_m": 0.25     | "reach_m": 0.8      | points[1].sling.reach_m: is 0.8 m; it must be below the 0.7
            "reach_m": 0.25     | "reach_m": 0        | points[1].sling.reach_m
            "EA_kN": 110        | "EA_kN": 0          | points[1].sling.EA_kN
            "strand_kN": 17.8, "knot_efficiency": 0.64} | "strand_kN": 0} | points[1].sling.strand_kN
            "EA_kN": 110, "strand_kN": 17.8, "knot_efficiency": 0.64 | "knot_efficiency": 2 | sling.knot_efficiency
            "EA_kN": 110        | "length_m": 110     | length_m
            "is": "tree"        | "is": "stump"       | points[1].is
            """)
    void aSlingThatCannotBeIsRefusedWithItsKey(String right, String wrong, String named) {
        String text = SLUNG.replace(right, wrong);

        assertThat(text).isNotEqualTo(SLUNG);
        assertThatThrownBy(() -> RigFile.read("the rig", text))
                .isInstanceOf(InputException.class)
                .hasMessageContaining(named);
    }

    @Test
    void aSlingThatEndsNowhereIsRefusedWhereTheRestOfTheRigIsLaidToItsEnd() {
        String text = SLUNG.replace("\"reach_m\": 0.25, ", "")
                .replace("\"kind\": \"focused\", \"focus\"", "\"kind\": \"sliding\", \"focus\"")
                .replace("\"strands\": 2,", "")
                .replace("\"slack_m\": {\"B\": 0.02}, ", "");

        assertThatThrownBy(() -> RigFile.read("the rig", text))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("points[1].sling.reach_m: is missing; in a rig of kind sliding");
    }

    private static final String REDIRECTED = TWO_POINTS.replace(
            "\"load_spread\": 0.2",
            "\"redirect\": {\"name\": \"R\", \"at\": [0.8, -1.5, 0.2], \"strength_kN\": 9}, \"load_spread\": 0.2");

    @Test
    void aRedirectReadsBackAsTheSame() {
        RigInput rig = RigFile.read("the rig", REDIRECTED);

        assertThat(rig.redirect().orElseThrow().name()).isEqualTo("R");
        assertThat(RigFile.read("the copy", RigFile.write(rig))).isEqualTo(rig);
    }

    @Test
    void theAnswerSaysWhatARedirectBearsAndWhatItsLossDoes() {
        Json redirect = at(answer(REDIRECTED), "redirect");

        assertThat(number(redirect, "deflection_deg")).isBetween(30.0, 45.0);
        assertThat(number(redirect, "kN"))
                .isCloseTo(
                        2 * 90 * 9.80665e-3 * Math.sin(Math.toRadians(number(redirect, "deflection_deg") / 2)),
                        within(1e-5));
        assertThat(number(redirect, "worst", "kN")).isGreaterThan(number(redirect, "kN"));
        assertThat(number(redirect, "strength_over_worst"))
                .isCloseTo(9 / number(redirect, "worst", "kN"), within(2e-3));
        assertThat(at(redirect, "if_lost", "slack_m")).isEqualTo(Json.NOTHING);
        assertThat(number(redirect, "if_lost", "point_kN", "A")).isPositive();
        assertThat(at(answer(TWO_POINTS), "steady")).isNotNull();
        assertThat(answer(TWO_POINTS).field("redirect")).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            "at": [0.8, -1.5, 0.2]  | "at": [0, -0.6]      | load.redirect.at: is the place of the focus
            "at": [0.8, -1.5, 0.2]  | "at": [0, -0.61]     | load.redirect.at: is so near
            "at": [0.8, -1.5, 0.2], | ''                   | load.redirect.at: is missing
            "strength_kN": 9        | "strength_kN": 0     | load.redirect.strength_kN
            "strength_kN": 9        | "friction": 0.2      | friction
            """)
    void aRedirectThatCannotBeIsRefusedWithItsKey(String right, String wrong, String named) {
        String text = REDIRECTED.replace(right, wrong);

        assertThat(text).isNotEqualTo(REDIRECTED);
        assertThatThrownBy(() -> RigFile.read("the rig", text))
                .isInstanceOf(InputException.class)
                .hasMessageContaining(named);
    }

    private static final String LIMITED = TWO_POINTS
            .replace("\"kind\": \"focused\"", "\"kind\": \"limited\", \"limit_m\": [0.1, 0.12]")
            .replace("\"slack_m\": {\"B\": 0.02}", "\"slider_strands\": 2, \"friction\": 0.25");

    @ParameterizedTest
    @ValueSource(strings = {"\"limit_m\": [0.1, 0.12]", "\"limit_range_deg\": [-12.5, 20]"})
    void aLimitedRigReadsBackAsTheSame(String limits) {
        String text = LIMITED.replace("\"limit_m\": [0.1, 0.12]", limits);
        RigInput rig = RigFile.read("the rig", text);

        assertThat(RigFile.write(rig)).contains(limits, "\"slider_strands\": 2", "\"friction\": 0.25");
        assertThat(RigFile.read("the copy", RigFile.write(rig))).isEqualTo(rig);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            "limit_m": [0.1, 0.12], | ''             | limit_m
            [0.1, 0.12]             | [0.1]          | rig.limit_m: has 1 number
            [0.1, 0.12]             | []             | rig.limit_m: has 0 numbers
            [0.1, 0.12]             | [0.1, 5]       | rig.limit_m: is 5 m for point B
            [0.1, 0.12]             | [0, 0.12]      | rig.limit_m: is 0 m for point A
            [0.1, 0.12]             | 0.1            | limit_m
            "friction": 0.25        | "limit_range_deg": [-5, 5]    | both limit_m and limit_range_deg
            "friction": 0.25        | "captured": true              | captured
            "slider_strands": 2     | "slider_strands": 3           | rig.slider_strands: is 3
            "slider_strands": 2     | "slider_strands": 1.5         | slider_strands
            "limit_m": [0.1, 0.12]  | "limit_range_deg": [20, 5]    | rig.limit_range_deg: goes from 20
            "kind": "limited"       | "kind": "sliding"             | rig.limit_m: does not belong
            """)
    void aLimitedRigThatCannotBeIsRefusedWithItsKey(String right, String wrong, String named) {
        String text = LIMITED.replace(right, wrong);

        assertThat(text).isNotEqualTo(LIMITED);
        assertThatThrownBy(() -> RigFile.read("the rig", text))
                .isInstanceOf(InputException.class)
                .hasMessageContaining(named);
    }

    @Test
    void theAnswerToALimitedRigSaysWhereItsKnotsAre() {
        Json.Fields answer = answer(LIMITED);

        assertThat(number(answer, "limits", "limit_m", "0")).isEqualTo(0.1);
        assertThat(number(answer, "limits", "limit_m", "1")).isEqualTo(0.12);
        assertThat(((Json.Items) at(answer, "steady", "knots", "A", "at")).values())
                .hasSize(3);
        assertThat(at(answer, "steady", "knots", "B", "against_master")).isEqualTo(Json.of(false));
        assertThat(number(answer, "share_range", "A", "0")).isLessThan(0.5);
        assertThat(at(answer, "cuts", "2", "strand")).isEqualTo(Json.of("slider"));
        assertThat(at(answer, "cuts", "2", "held")).isEqualTo(Json.of(true));
        assertThat(((Json.Fields) at(answer, "cuts", "2")).field("as_loss_of")).isEmpty();

        Json.Fields found = answer(LIMITED.replace("\"limit_m\": [0.1, 0.12]", "\"limit_range_deg\": [-10, 10]"));
        assertThat(number(found, "limits", "limit_m", "0")).isBetween(0.005, 0.2);
    }

    @Test
    void everyReasonIsGivenAtOnce() {
        String text = TWO_POINTS.replace("\"mass_kg\": 90", "\"mass_kg\": 0").replace("\"EA_kN\": 70", "\"EA_kN\": -1");

        assertThatThrownBy(() -> RigFile.read("the rig", text))
                .hasMessageContaining("2 things are wrong")
                .hasMessageContaining("load.mass_kg")
                .hasMessageContaining("rig.EA_kN");
    }

    @Test
    void theAnswerHasTheKeysThatProgramsRelyOn() {
        Json.Fields answer = answer(TWO_POINTS);

        assertThat(answer.values()).containsKeys("steady", "sector", "checks", "assumed");
        assertThat(((Json.Items) at(answer, "steady", "master")).values()).hasSize(3);
        assertThat(number(answer, "steady", "share", "A") + number(answer, "steady", "share", "B"))
                .isCloseTo(1, within(2e-6));
        assertThat(((Json.Items) at(answer, "sector", "directions")).values()).hasSize(21);
        assertThat(number(answer, "sector", "directions", "0", "deg")).isEqualTo(-15);
        assertThat(number(answer, "sector", "directions", "20", "deg")).isEqualTo(15);
        assertThat(number(answer, "sector", "worst", "A", "kN"))
                .isGreaterThanOrEqualTo(number(answer, "steady", "point_kN", "A"));
        assertThat(at(answer, "checks", "E", "verdict")).isInstanceOf(Json.Text.class);
        assertThat(at(answer, "checks", "A", "why")).isInstanceOf(Json.Text.class);
    }

    @Test
    void whatIsNotBuiltYetOrWasNotAskedForIsAbsentAndNotNull() {
        assertThat(answer(TWO_POINTS).values()).doesNotContainKeys("cascade", "best_focus", "share_range", "limits");
    }

    @Test
    void anUnknownAngleIsNullWithItsReasonBesideIt() {
        Json.Fields answer = answer("""
                {"points": [{"name": "T", "at": [0, 0]}], "load": {"force_kN": 1, "toward_deg": 0},
                 "rig": {"kind": "single", "focus": [0, -1], "EA_kN": 70}}
                """);

        assertThat(at(answer, "steady", "angle_deg")).isEqualTo(Json.NOTHING);
        assertThat(at(answer, "steady", "angle_deg_why")).isInstanceOf(Json.Text.class);
        assertThat(number(answer, "steady", "point_kN", "T")).isEqualTo(1);
    }

    /** Per leg W / (2 cos(a/2)). Source: B. Gaines, Rappelling (2013), p. 61, rounded there to two decimals. */
    @ParameterizedTest
    @CsvSource({"30,0.52", "60,0.58", "90,0.71", "120,1.00", "150,1.93"})
    void aFileGivesThePublishedForceOfTwoEqualLegs(double angle, BigDecimal published) {
        double half = Math.toRadians(angle / 2);
        String text = String.format(Locale.ROOT, """
                {"points": [{"name": "A", "at": [%1$.9f, 0]}, {"name": "B", "at": [-%1$.9f, 0]}],
                 "load": {"force_kN": 1, "toward_deg": 0},
                 "rig": {"kind": "focused", "focus": [0, -%2$.9f], "EA_kN": 90000}}
                """, Math.sin(half), Math.cos(half));

        assertThat(number(answer(text), "steady", "point_kN", "A")).isCloseTo(published.doubleValue(), within(0.0051));
    }
}
