package thalweg.tui.screen;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import thalweg.logbook.StationRecord;
import thalweg.service.FindRecord;
import thalweg.tui.core.Glyphs;
import thalweg.tui.core.Key;

/** What somebody tries on the rig screen: other layouts, directions and places, and steps back. */
final class RigTryingTest {

    private static final Key SAVE = Key.ctrl('s');

    private static Walk atPorte(int rows, int columns, Glyphs glyphs) {
        Walk walk = Walk.sample(rows, columns, glyphs);
        return walk.press(Key.Named.ENTER).press(Key.Named.DOWN, 2).press(Key.Named.ENTER);
    }

    private static StationRecord porte(Walk walk) {
        return new FindRecord(walk.session()).station("éclusaune/porte").station();
    }

    private static String words(Walk walk) {
        return walk.screen().replaceAll("[│█\\s]+", " ");
    }

    @Test
    void layoutsStandSideBySideAndTurnWithWhatMatters() {
        try (Walk walk = atPorte(40, 120, Glyphs.BRAILLE)) {
            walk.type("r").type("o").fill("Sway", "25°");
            walk.press(SAVE).type("s");
            assertThat(walk.screen())
                    .contains("The figures speak for limited.", "Nobody said what matters most.")
                    .contains("Does the load stay in one direction? As stated, no.");

            walk.type("mm");
            assertThat(walk.screen()).contains("The figures speak for focused, where little extension matters most.");
        }
    }

    @Test
    void onNarrowTerminalsTheTableGoesOnBelow() {
        try (Walk walk = atPorte(60, 40, Glyphs.BRAILLE)) {
            walk.type("rs");

            assertThat(walk.screen()).contains("Layout  focused ", "Layout  limited ", "E Equalised, A Angle");
        }
    }

    @Test
    void theLoadSwingsThroughItsSwayByKey() {
        try (Walk walk = atPorte(40, 120, Glyphs.BRAILLE)) {
            walk.type("r.");
            assertThat(walk.screen()).contains("The load does not sway; o states how far it does.");

            walk.type("o").fill("Sway", "20°").press(SAVE).type("...");
            assertThat(walk.screen()).contains("Load toward 6.0°: left bolt ");
            walk.type(",,,,,,,,,,,,,,,,,,");
            assertThat(walk.screen()).contains("Load toward -20.0°: left bolt ");
        }
    }

    @Test
    void stepsAreTakenBackOneByOne() {
        try (Walk walk = atPorte(40, 120, Glyphs.BRAILLE)) {
            walk.type("rz");
            assertThat(walk.screen()).contains("Nothing was changed here yet.");
            String first = walk.screen().lines().skip(1).findFirst().orElseThrow();

            walk.press(Key.Named.RIGHT, 2).type("o").fill("Load", "150 kg").press(SAVE);
            assertThat(words(walk)).contains("Load 150 kg", "nobody stated: aim, layout,");
            walk.type("z");
            assertThat(words(walk)).contains("Load 100 kg", "nobody stated: load, aim,");
            walk.type("zz");
            assertThat(walk.screen().lines().skip(1).findFirst().orElseThrow()).isEqualTo(first);
        }
    }

    @Test
    void aPointIsTriedInAnotherPlaceAndThePartStays() {
        try (Walk walk = atPorte(60, 120, Glyphs.BRAILLE)) {
            walk.type("r").type("o").confirmStart().fill("left bolt: place", "-0.5 m, 0.1 m");
            walk.fill("left bolt: holds", "8 kN").press(SAVE);
            assertThat(walk.screen()).contains("Not as it is entered: left bolt.");
            walk.type("a");

            assertThat(porte(walk).analyses().get(0).content().input())
                    .contains("\"at\": [-0.5, 0.1, 0]", "\"radial_kN\": 8");
            assertThat(porte(walk)
                            .parts()
                            .get(0)
                            .part()
                            .strength()
                            .orElseThrow()
                            .inKilonewtons())
                    .isEqualTo(25);
        }
    }

    @Test
    void anAnalysisIsRunAgainOnWhatIsEnteredToday() {
        try (Walk walk = atPorte(40, 120, Glyphs.BRAILLE)) {
            walk.type("ro")
                    .confirmStart()
                    .fill("Load", "90 kg")
                    .press(SAVE)
                    .type("a")
                    .press(Key.Named.ESCAPE);
            walk.press(Key.Named.END).type("r");
            assertThat(walk.screen())
                    .contains("At the aim every point bears what it bore then.")
                    .contains("Load 90 kg")
                    .doesNotContain("start values");

            walk.press(Key.Named.ESCAPE)
                    .type("ig")
                    .press(SAVE)
                    .press(Key.Named.END)
                    .type("r");
            assertThat(walk.screen()).contains("left bolt: x gone, 2026-11-25", "left bolt is gone and left out.");
        }
    }
}
