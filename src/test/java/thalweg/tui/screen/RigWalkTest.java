package thalweg.tui.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import thalweg.logbook.StationRecord;
import thalweg.service.FindRecord;
import thalweg.tui.core.Glyphs;
import thalweg.tui.core.Key;

final class RigWalkTest {

    private static final Key SAVE = Key.ctrl('s');

    @TempDir
    private Path folder = Path.of("");

    private static Walk atPorte(int rows, int columns, Glyphs glyphs) {
        Walk walk = Walk.sample(rows, columns, glyphs);
        return walk.press(Key.Named.ENTER).press(Key.Named.DOWN, 2).press(Key.Named.ENTER);
    }

    private static StationRecord porte(Walk walk) {
        return new FindRecord(walk.session()).station("éclusaune/porte").station();
    }

    @Test
    void thePointsComeFromTheInventory() {
        try (Walk walk = atPorte(60, 120, Glyphs.BRAILLE)) {
            walk.type("r");

            assertThat(walk.screen())
                    .contains("left bolt: 0.52 kN at the aim (48 %)", "right bolt: 0.57 kN at the aim (52 %)")
                    .contains("Equalised: good", "nobody stated: load, aim,");
            assertThat(walk.press(Key.Named.PAGE_DOWN, 12).screen()).contains("The points are fixed and rigid");
        }
    }

    @Test
    void theForcesFollowTheFocus() {
        try (Walk walk = atPorte(40, 120, Glyphs.BRAILLE)) {
            walk.type("r").press(Key.Named.LEFT, 21);

            assertThat(walk.screen())
                    .contains("right 0.00 m, up -0.42 m")
                    .contains("left bolt: 0.97 kN at the aim (99 %)");
        }
    }

    @Test
    void aFocusOnAPointIsRefusedInWords() {
        try (Walk walk = atPorte(40, 120, Glyphs.BRAILLE)) {
            walk.type("r").press(Key.Named.LEFT, 21).press(Key.Named.UP, 42);

            assertThat(walk.screen())
                    .contains("This rig cannot be computed: rig.focus: is the place of point left bolt");
            assertThat(walk.type("a").screen()).contains("The rig cannot be worked out yet.");
        }
    }

    @Test
    void aStartValueIsNotAttachedAsIfItWereStated() {
        try (Walk walk = atPorte(24, 80, Glyphs.BRAILLE)) {
            walk.type("r").type("a");

            assertThat(walk.screen()).contains("Nobody has stated: load, aim, layout, material.");
            assertThat(porte(walk).analyses()).isEmpty();
        }
    }

    @Test
    void anAnalysisIsAttachedAndGoesStaleWithItsInventory() throws IOException {
        try (Walk walk = atPorte(40, 120, Glyphs.BRAILLE)) {
            walk.type("r")
                    .type("o")
                    .confirmStart()
                    .fill("Load", "180 lb")
                    .press(SAVE)
                    .type("a");
            assertThat(walk.screen()).contains("Attached: the analysis stands with the station");
            assertThat(porte(walk).analyses()).hasSize(1);

            walk.press(Key.Named.ESCAPE).press(Key.Named.END);
            assertThat(walk.screen())
                    .contains("rig analysis 2026-11-25, \"focused")
                    .contains("Load 82 kg");
            assertThat(walk.screen()).doesNotContain("out of date");

            walk.press(Key.Named.HOME).press(Key.Named.DOWN, 2).type("e");
            walk.press(Key.Named.DOWN, 2).type(" new").press(SAVE);
            assertThat(walk.screen()).contains("out of date");

            Path sheet = folder.resolve("sheet");
            walk.press(Key.Named.ESCAPE)
                    .type("w")
                    .press(Key.Named.DOWN, 2)
                    .press(Key.ctrl('u'))
                    .press(Key.ctrl('k'));
            walk.type(sheet.toString()).press(SAVE);
            assertThat(walk.screen()).contains("Written: ");
            String page = Files.readString(folder.resolve("sheet.html"));
            assertThat(page).contains("<svg", "left bolt has changed since", "Gorge de l");
        }
    }

    private static void choose(Walk walk, int layout, boolean captured) {
        walk.type("r").type("o").confirmStart().field("Layout").press(Key.Named.RIGHT, layout);
        if (!captured) {
            walk.field("When a point goes").press(Key.Named.RIGHT);
        }
        walk.press(SAVE);
    }

    @Test
    void theLayoutIsChosenInTheFormAndLossesFollow() {
        try (Walk walk = atPorte(40, 120, Glyphs.BRAILLE)) {
            choose(walk, 1, true);

            String words = walk.screen().replaceAll("[│█\\s]+", " ");
            assertThat(words).contains("sliding (the master slides on one loop)", "keeps the master in the loop");
            walk.type("x");
            assertThat(walk.screen()).contains("Held, strength unknown: left bolt goes", "left bolt lost", ", peak ");
            walk.type("x");
            assertThat(walk.screen()).contains("right bolt goes", "right bolt lost");
            walk.type("x");
            assertThat(walk.screen()).contains("Arrows move the focus").doesNotContain("bolt lost");
        }
    }

    @Test
    void aMasterThatNothingKeepsInTheLoopIsLost() {
        try (Walk walk = atPorte(40, 120, Glyphs.BRAILLE)) {
            choose(walk, 1, false);
            walk.type("x");

            assertThat(walk.screen()).contains("EVERYTHING IS LOST: left bolt goes");
        }
    }

    @Test
    void aTriangleIsOneOfTheLayouts() {
        try (Walk walk = atPorte(40, 120, Glyphs.BRAILLE)) {
            choose(walk, 3, true);

            assertThat(walk.screen()).contains("triangle (one loop through both points)");
            assertThat(walk.type("a").screen()).contains("Attached");
            assertThat(porte(walk).analyses().get(0).content().input()).contains("\"kind\": \"loop\"");
        }
    }

    private static Walk limited(Walk walk) {
        walk.type("r").type("o").confirmStart().field("Layout").press(Key.Named.RIGHT, 2);
        return walk.field("left bolt: knot");
    }

    @Test
    void limiterKnotsAreTypedForEachPoint() {
        try (Walk walk = atPorte(60, 120, Glyphs.BRAILLE)) {
            limited(walk).type("10 cm").press(Key.Named.DOWN).type("8 cm").press(SAVE);

            String words = walk.screen().replaceAll("[│█\\s]+", " ");
            assertThat(words)
                    .contains("limiter knots 0.10 m (left bolt) and 0.08 m (right bolt) from the focus")
                    .contains("At the aim the master", "Friction at the master may leave other shares");
            walk.type("a");
            assertThat(porte(walk).analyses().get(0).content().input())
                    .contains("\"kind\": \"limited\"", "\"limit_m\": [0.1, 0.08]")
                    .doesNotContain("slider_strands", "friction", "limit_range_deg");
        }
    }

    @Test
    void limiterKnotsAreFoundFromTheSwayThatStaysFree() {
        try (Walk walk = atPorte(60, 120, Glyphs.BRAILLE)) {
            limited(walk).fill("Free sway", "-10 to 15").field("Slides on").press(Key.Named.RIGHT);
            walk.press(SAVE);

            String words = walk.screen().replaceAll("[│█\\s]+", " ");
            assertThat(words).contains("found so that the master slides freely from -10° to 15°", "off both limiter");
            walk.type("a");
            assertThat(porte(walk).analyses().get(0).content().input())
                    .contains("\"limit_range_deg\": [-10, 15]", "\"slider_strands\": 2")
                    .doesNotContain("limit_m");
        }
    }

    @Test
    void aLimitedRigWithoutLimitsSaysWhatIsMissingAndAWrongSwayStopsTheForm() {
        try (Walk walk = atPorte(40, 120, Glyphs.BRAILLE)) {
            limited(walk).press(SAVE);
            assertThat(walk.screen()).contains("states neither limit_m nor limit_range_deg");

            walk.type("o").fill("Free sway", "ten").press(SAVE);
            assertThat(walk.screen()).contains("is no range of directions; write one such as -10 to 15.");
        }
    }

    @ParameterizedTest
    @CsvSource({"24, 80", "12, 40"})
    void aLossIsShownWhereThereIsLittleRoom(int rows, int columns) {
        try (Walk walk = atPorte(rows, columns, Glyphs.BRAILLE)) {
            walk.type("r").type("x");

            assertThat(walk.screen()).contains("Held, strength unknown: left bolt go", "left bolt lost");
            walk.press(Key.Named.TAB);
            assertThat(walk.screen()).contains("Also at this anchor, in no figure", "Held, strength unknown");
            walk.press(Key.Named.PAGE_DOWN);
            assertThat(walk.screen()).contains("Held, strength unknown", "Drop 0.05 m", "Model peak");
        }
    }

    @Test
    void strengthsAndRopeThatAreStatedInTheFormAnswerWhetherItHolds() {
        try (Walk walk = atPorte(40, 120, Glyphs.BRAILLE)) {
            walk.type("r").type("o").confirmStart();
            walk.fill("Strand strength", "17.8 kN").fill("Knots leave", "64 %");
            walk.fill("Rope out", "12 m")
                    .fill("Rope stiffness", "40 kN")
                    .press(SAVE)
                    .type("x");

            assertThat(walk.screen()).contains("Held, within strength (");
            walk.type("a");
            assertThat(porte(walk).analyses().get(0).content().input())
                    .contains("\"strand_kN\": 17.8", "\"knot_efficiency\": 0.64", "\"rope_out_m\": 12");
        }
    }

    private static String words(Walk walk) {
        return walk.screen().replaceAll("[│█\\s]+", " ");
    }

    @Test
    void theRatioOfALegIsUnknownUntilItsStrengthIsStated() {
        try (Walk walk = atPorte(75, 80, Glyphs.BRAILLE)) {
            walk.type("r").press(Key.Named.TAB);

            assertThat(words(walk))
                    .contains("left bolt: 48.2 times at rest, 16.2 times after a loss")
                    .contains("left bolt leg: unknown (the strength of a strand is not known)");
        }
    }

    @Test
    void aKnotThatIsChosenByNameShowsItsRangeUntilAShareIsTyped() {
        try (Walk walk = atPorte(75, 80, Glyphs.BRAILLE)) {
            walk.type("r").type("o").confirmStart().fill("Strand strength", "17.8 kN");
            walk.field("Knot").press(Key.Named.RIGHT, 2);
            assertThat(walk.screen()).contains("water knot, webbing: 64 % (55 to 70)");
            walk.press(SAVE).press(Key.Named.TAB);
            assertThat(words(walk))
                    .contains("left bolt leg: 44.0 times (37.8 to 48.1) at rest")
                    .contains(
                            "35.6 kN as stated, 22.8 kN (19.6 kN to 24.9 kN) left: knot 0.64 (0.55 to 0.7), published:"
                                    + " water knot, a rescue team's training table; range from memory.");
            walk.type("a");
            assertThat(porte(walk).analyses().get(0).content().input())
                    .contains("\"knot\": \"water_knot\"")
                    .doesNotContain("knot_efficiency");

            walk.type("o").fill("Knots leave", "60 %").press(SAVE);
            assertThat(words(walk))
                    .contains("21.4 kN left: knot 0.6, as stated with the rig: its knots leave 60 %.")
                    .doesNotContain("(19.6 kN to");
        }
    }

    @Test
    void theBestFocusIsLookedForAndMovedTo() {
        try (Walk walk = atPorte(40, 120, Glyphs.BRAILLE)) {
            walk.type("r").type("m");
            assertThat(walk.screen()).contains("There is no best focus to move to; b looks for one.");
            walk.press(Key.Named.LEFT, 12).type("b");
            assertThat(words(walk)).contains("Best focus on the line across the aim: right 0.20");
            walk.type("m");
            assertThat(walk.screen()).contains("right 0.20 m, up -0.42 m").doesNotContain("Best focus on the line");
        }
    }

    @Test
    void noPeakIsShownWithoutItsRange() {
        try (Walk walk = atPorte(70, 80, Glyphs.BRAILLE)) {
            walk.type("r").press(Key.Named.TAB);
            assertThat(words(walk))
                    .contains("Model peak, load at rest, dry, undamped: right bolt 1.47 kN (range 1.47 kN to 1.54 kN)")
                    .doesNotContain("(range being worked out)");

            walk.press(Key.Named.LEFT, 3);
            assertThat(words(walk))
                    .containsPattern("right bolt 1\\.\\d\\d kN \\(range 1\\.\\d\\d kN to 1\\.\\d\\d kN\\)")
                    .doesNotContain("(range being worked out)", "range 1.47 kN to 1.54 kN");
        }
    }

    @Test
    void aBestFocusThatMakesNoSenseSaysWhyOnASmallScreenToo() {
        try (Walk walk = atPorte(12, 40, Glyphs.BRAILLE)) {
            choose(walk, 1, true);
            walk.type("b");

            assertThat(words(walk)).contains("Best focus: none. The master slides to a place of its own");
        }
    }

    @Test
    void fieldsThatAreLeftEmptyAreAssumedOrUnknown() {
        try (Walk walk = atPorte(40, 120, Glyphs.BRAILLE)) {
            walk.type("r").type("o").confirmStart().press(SAVE).type("a");

            assertThat(porte(walk).analyses().get(0).content().input())
                    .doesNotContain("strands", "strand_kN", "friction", "rope_out_m");
        }
    }

    @Test
    void asciiTerminalsGetADrawingToo() {
        try (Walk walk = atPorte(24, 80, Glyphs.ASCII)) {
            walk.type("r");

            String drawing = walk.screen();
            assertThat(drawing).contains("left bolt 0.52 kN", "load 0.98 kN", "\\", "/");
            assertThat(drawing.codePoints().filter(c -> c > 0x2000 && c < 0x3000))
                    .isEmpty();
        }
    }

    @Test
    void pointsWithoutAPlaceAreNamedAndLeftOut() {
        try (Walk walk = Walk.empty(40, 120)) {
            walk.type("n").type("Probe").press(SAVE).press(Key.Named.ENTER);
            walk.type("n").press(SAVE).type("s").type("top").press(SAVE);
            walk.press(Key.Named.DOWN).press(Key.Named.ENTER).type("a").press(SAVE);
            walk.type("p").type("old piton").press(SAVE).type("r");

            assertThat(walk.screen())
                    .contains("old piton is left out: nobody entered where it is.")
                    .contains("No point of this anchor can be rigged yet.");
        }
    }

    @Test
    void aPointThatWasFoundUnsafeIsNamedBeforeTheFigures() {
        try (Walk walk = atPorte(40, 120, Glyphs.BRAILLE)) {
            walk.type("iug").press(SAVE).type("r");

            String words = walk.screen().replaceAll("\\s+", " ");
            assertThat(words)
                    .contains("left bolt is in this rig and was found: ! unsafe", "right bolt is gone and left out.");
            assertThat(words.indexOf("! unsafe")).isLessThan(words.indexOf("Load 100 kg"));
        }
    }
}
