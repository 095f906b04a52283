package thalweg.exchange.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import thalweg.body.Limits;
import thalweg.json.Json;
import thalweg.json.JsonDocument;
import thalweg.json.JsonText;
import thalweg.rig.Analyze;
import thalweg.rig.Cascade;
import thalweg.rig.RigAnswer;
import thalweg.rig.RigInput;
import thalweg.rig.RigStudy;

final class RigAnswerTextTest {

    private static final String SLIDING = """
            {"points": [{"name": "A", "at": [-0.3, 0], "strength_kN": 25}, {"name": "B", "at": [0.3, 0.1, 0.05]}],
             "load": {"mass_kg": 90, "toward_deg": 5, "sway_deg": 15},
             "rig": {"kind": "sliding", "focus": [0, -0.6], "EA_kN": 70, "strand_kN": 17.8, "knot_efficiency": 0.64}}
            """;

    private static RigAnswer analyzed(String text) {
        return Analyze.of(RigFile.read("the rig", text));
    }

    private static Json.Fields answer(String text) {
        return (Json.Fields) JsonDocument.read(
                        "the answer",
                        RigAnswerText.write(RigStudy.of(analyzed(text)).withBestFocus()))
                .root();
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
    void aLossHasItsFiguresAndNeverHeldWithoutWhetherItIsStrongEnough() {
        Json.Fields answer = answer(SLIDING);

        assertThat(at(answer, "losses", "A", "held")).isEqualTo(Json.of(true));
        assertThat(at(answer, "losses", "A", "within_strength")).isEqualTo(Json.NOTHING);
        assertThat(((Json.Text) at(answer, "losses", "A", "within_strength_why")).value())
                .contains("the strength of B");
        assertThat(number(answer, "losses", "A", "free_travel_m")).isBetween(0.3, 0.8);
        assertThat(number(answer, "losses", "A", "drop_m"))
                .isGreaterThan(number(answer, "losses", "A", "free_travel_m"));
        assertThat(number(answer, "losses", "A", "swing_m")).isPositive();
        assertThat(number(answer, "losses", "A", "peak_kN", "B")).isGreaterThan(2 * 0.88);

        assertThat(at(answer, "losses", "B", "within_strength")).isEqualTo(Json.of(true));
        assertThat(at(answer, "losses", "B", "peak_kN")).isNotEqualTo(Json.NOTHING);
        assertThat(((Json.Text) at(answer, "peak_note")).value())
                .contains("at rest", "dry", "undamped", "two to three times");
    }

    @Test
    void cutsFrictionAndAssumptionsOfASlidingRigAreThere() {
        Json.Fields answer = answer(SLIDING);

        assertThat(at(answer, "cuts", "0", "strand")).isEqualTo(Json.of("sliding loop"));
        assertThat(at(answer, "cuts", "0", "held")).isEqualTo(Json.of(false));
        assertThat(number(answer, "share_range", "A", "0")).isBetween(0.3, 0.49);
        assertThat(number(answer, "share_range", "A", "1")).isBetween(0.51, 0.7);
        assertThat(number(answer, "share_range", "A", "0") + number(answer, "share_range", "B", "1"))
                .isCloseTo(1, within(2e-6));
        assertThat(((Json.Items) at(answer, "assumed")).values())
                .contains(Json.of("captured"), Json.of("friction"))
                .doesNotContain(Json.of("strands"));
        assertThat(((Json.Fields) at(answer, "checks")).values()).containsOnlyKeys("E", "A", "R", "NE", "S", "T");
    }

    @Test
    void eachPartHasItsRatiosOrTheReasonWhyTheyAreUnknown() {
        Json.Fields answer = answer(SLIDING);

        double steady = number(answer, "safety", "A", "steady");
        double byFriction = number(answer, "share_range", "A", "1") / number(answer, "steady", "share", "A");
        assertThat(byFriction).isGreaterThan(1.05);
        assertThat(steady * number(answer, "sector", "worst", "A", "kN") * byFriction)
                .isCloseTo(25, within(0.02));
        assertThat(number(answer, "safety", "A", "after_loss") * number(answer, "losses", "B", "peak_kN", "A"))
                .isCloseTo(25, within(0.02));
        assertThat(at(answer, "safety", "B", "steady")).isEqualTo(Json.NOTHING);
        assertThat(at(answer, "safety", "B", "steady_why")).isEqualTo(Json.of("the strength of B is not known"));
        assertThat(number(answer, "safety", "sliding loop", "after_loss")).isPositive();
    }

    @Test
    void aPointThatIsCalledLikeAStrandDoesNotHideIt() {
        Json.Fields answer = answer(SLIDING.replace("\"B\"", "\"sliding loop\"").replace("\"C\"", "\"sliding loop\""));

        assertThat(at(answer, "safety", "sliding loop", "steady")).isEqualTo(Json.NOTHING);
        assertThat(number(answer, "safety", "sliding loop (strand)", "steady")).isPositive();
    }

    private static final String V = """
            {"points": [{"name": "A", "at": [-0.3, 0], "strength_kN": 25}, {"name": "B", "at": [0.3, 0], "strength_kN": 15}],
             "load": {"mass_kg": 90, "toward_deg": 0, "sway_deg": 5},
             "rig": {"kind": "focused", "focus": [0, -0.6], "EA_kN": 70}}
            """;

    @Test
    void theBestFocusLeansTowardsTheStrongerPoint() {
        Json.Fields answer = answer(V);

        assertThat(number(answer, "best_focus", "focus", "0")).isBetween(-0.2, -0.02);
        assertThat(number(answer, "best_focus", "focus", "1")).isEqualTo(-0.6);
        assertThat(number(answer, "best_focus", "share", "A"))
                .isGreaterThan(number(answer, "best_focus", "share", "B"));
        assertThat(number(answer, "best_focus", "least_safety_ratio"))
                .isGreaterThan(number(answer, "best_focus", "least_safety_ratio_as_given"));
        assertThat(number(answer, "safety", "B", "steady"))
                .isEqualTo(number(answer, "best_focus", "least_safety_ratio_as_given"));
    }

    @Test
    void aBestFocusThatThereIsNotIsNullWithItsReason() {
        assertThat(at(answer(SLIDING), "best_focus")).isEqualTo(Json.NOTHING);
        assertThat(((Json.Text) at(answer(SLIDING), "best_focus_why")).value()).contains("place of its own");
    }

    @Test
    void theMaterialHasLengthsAndConnectors() {
        Json.Fields answer = answer(SLIDING);

        double whole = number(answer, "material", "length_m");
        double ways = Math.hypot(0.3, 0.6) + Math.sqrt(0.09 + 0.49 + 0.0025);
        assertThat(whole).isCloseTo(2 * ways + 0.30 + 2 * 0.075, within(1e-3));
        assertThat(number(answer, "material", "pieces", "0", "length_m")).isEqualTo(whole);
        assertThat(number(answer, "material", "connectors")).isEqualTo(3);
        assertThat(((Json.Text) at(answer, "material", "note")).value()).contains("from memory");
    }

    @Test
    void aRangeOfPeaksHoldsThePeak() {
        RigStudy study = RigStudy.of(analyzed(V)).withPeakRange();
        Json answer =
                JsonDocument.read("the answer", RigAnswerText.write(study)).root();

        double peak = number(answer, "losses", "A", "peak_kN", "B");
        assertThat(number(answer, "peak_range", "A", "peak_kN", "B", "0")).isLessThan(peak);
        assertThat(number(answer, "peak_range", "A", "peak_kN", "B", "1")).isGreaterThan(peak);
        assertThat(at(answer, "peak_range", "A", "complete")).isEqualTo(Json.of(true));
        assertThat(((Json.Text) at(answer, "peak_range_note")).value()).contains("10 and 20 mm");
    }

    private static Json.Fields cascade(String text) {
        RigInput input = RigFile.read("the rig", text);
        RigStudy study =
                RigStudy.of(Analyze.of(input)).with(Optional.of(Cascade.of(input, 4_000, 3, (done, all) -> true)));
        return (Json.Fields)
                JsonDocument.read("the answer", RigAnswerText.write(study)).root();
    }

    @Test
    void aCascadeHasItsSeedAndItsIntervals() {
        Json.Fields answer = cascade(V.replace("25}", "0.8}").replace("15}", "0.8}"));

        assertThat(number(answer, "cascade", "trials")).isEqualTo(4000);
        assertThat(number(answer, "cascade", "seed")).isEqualTo(3);
        double p = number(answer, "cascade", "any_point_fails", "p");
        assertThat(p).isBetween(0.02, 0.9);
        assertThat(number(answer, "cascade", "any_point_fails", "low")).isLessThan(p);
        assertThat(number(answer, "cascade", "any_point_fails", "high")).isGreaterThan(p);
        assertThat(number(answer, "cascade", "all_lost", "count")).isPositive();
        assertThat(((Json.Text) at(answer, "cascade", "note")).value()).contains("never a promise");
    }

    @Test
    void oddsThatAreUnknownAreNullWithTheirReason() {
        assertThat(at(cascade(SLIDING), "cascade")).isEqualTo(Json.NOTHING);
        assertThat(((Json.Text) at(cascade(SLIDING), "cascade_why")).value()).contains("the strength of B");
    }

    @Test
    void aRangeThatIsUnknownIsNullWithItsReason() {
        Json.Fields answer =
                answer(SLIDING.replace("{\"name\": \"B\"", "{\"name\": \"C\", \"at\": [0, 0.3]}, {\"name\": \"B\""));

        assertThat(at(answer, "share_range")).isEqualTo(Json.NOTHING);
        assertThat(((Json.Text) at(answer, "share_range_why")).value()).contains("three or more");
    }

    @Test
    void whereEverythingIsLostTheFiguresAreNullWithOneReason() {
        Json.Fields answer = answer(SLIDING.replace("\"EA_kN\"", "\"captured\": false, \"EA_kN\""));

        assertThat(at(answer, "losses", "A", "held")).isEqualTo(Json.of(false));
        assertThat(at(answer, "losses", "A", "within_strength")).isEqualTo(Json.NOTHING);
        assertThat(at(answer, "losses", "A", "drop_m")).isEqualTo(Json.NOTHING);
        assertThat(at(answer, "losses", "A", "why")).isInstanceOf(Json.Text.class);
    }

    @Test
    void aPeakThatCannotBeFollowedIsNullWithItsReason() {
        Json.Fields answer = answer("""
                {"points": [{"name": "A", "at": [-0.3, 0]}, {"name": "B", "at": [0.3, 0]}],
                 "load": {"mass_kg": 0.001, "toward_deg": 0},
                 "rig": {"kind": "focused", "focus": [0, -0.6], "EA_kN": 90000, "strands": 24}}
                """);

        assertThat(at(answer, "losses", "A", "peak_kN")).isEqualTo(Json.NOTHING);
        assertThat(at(answer, "losses", "A", "peak_kN_why")).isInstanceOf(Json.Text.class);
        assertThat(number(answer, "losses", "A", "drop_m")).isPositive();
    }

    @Test
    void theLongestAnswerCanBeKept() {
        StringBuilder points = new StringBuilder();
        for (int i = 0; i < 6; i++) {
            points.append(i == 0 ? "" : ", ")
                    .append("{\"name\": \"")
                    .append(Integer.toString(i).repeat(40))
                    .append("\", \"at\": [")
                    .append(i * 0.123456)
                    .append(", 0.1]}");
        }
        for (String kind : new String[] {"focused", "sliding"}) {
            String text =
                    "{\"points\": [" + points + "], \"load\": {\"mass_kg\": 90, \"toward_deg\": 0, \"sway_deg\": 17},"
                            + " \"rig\": {\"kind\": \"" + kind + "\", \"focus\": [0.3, -0.6], \"EA_kN\": 70}}";
            String line = RigAnswerText.line(analyzed(text));

            assertThat(line.getBytes(StandardCharsets.UTF_8).length).isLessThan(Limits.RIG_TEXT);
            assertThat(RigAnswerText.agrees(analyzed(text), line)).isTrue();
        }
    }

    /** What version 0.1.0 kept had neither losses nor cuts. */
    @Test
    void anAnswerOfAVersionThatComputedLessAgrees() {
        RigAnswer now = analyzed(SLIDING);
        Json.Fields full = (Json.Fields)
                JsonDocument.read("the answer", RigAnswerText.line(now)).root();
        Map<String, Json> before = new LinkedHashMap<>(full.values());
        before.keySet().removeAll(List.of("losses", "peak_note", "cuts", "share_range"));
        Json.Fields checks = (Json.Fields) full.field("checks").orElseThrow();
        before.put(
                "checks",
                Json.fields().put("E", checks.field("E").orElseThrow()).done());

        assertThat(RigAnswerText.agrees(now, JsonText.line(new Json.Fields(before))))
                .isTrue();
    }

    @Test
    void anAnswerWithAnotherFigureOrAnotherWordDoesNotAgree() {
        RigAnswer now = analyzed(SLIDING);
        String line = RigAnswerText.line(now);

        assertThat(RigAnswerText.agrees(now, line.replaceFirst("\"held\": ?true", "\"held\":false")))
                .isFalse();
        assertThat(RigAnswerText.agrees(now, RigAnswerText.line(analyzed(SLIDING.replace("90", "91")))))
                .isFalse();
        assertThat(RigAnswerText.agrees(now, "{}")).isTrue();
        assertThat(RigAnswerText.agrees(now, "not JSON")).isFalse();
        assertThat(RigAnswerText.agrees(now, "{\"steady\":[]}")).isFalse();
        assertThat(RigAnswerText.agrees(now, "{\"steady\":{\"point_kN\":{\"Z\":1}}}"))
                .isFalse();
    }
}
