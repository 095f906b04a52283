package thalweg.tui.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import thalweg.tui.core.Key;

/** That the screen says how to go on where somebody would be stuck. */
final class WaysOnTest {

    private static final Key SAVE = Key.ctrl('s');

    private static String foot(Walk walk) {
        List<String> lines = walk.screen().lines().toList();
        return lines.get(lines.size() - 1);
    }

    @Test
    void thePageOfAPlaceWithoutAStationSaysHowOneIsEntered() {
        try (Walk walk = Walk.empty(24, 80)) {
            walk.type("nProbe").press(SAVE).press(Key.Named.ENTER).type("n").press(SAVE);
            walk.press(Key.Named.ENTER);

            assertThat(walk.screen()).contains("No station here. Esc goes back; s enters one there, e edits.");

            walk.press(Key.Named.ESCAPE).type("s");
            assertThat(walk.screen()).contains("New station");
        }
    }

    @Test
    void whileWordsAreTypedTheFootOfThePartsNamesTheWayToTheKeys() {
        try (Walk walk = Walk.sample(24, 80)) {
            walk.type("p/");

            assertThat(foot(walk)).startsWith("F1 help  Tab to list, w writes it");

            walk.press(Key.Named.TAB).type("w");
            assertThat(walk.screen()).contains("Write the list of parts to a file");
        }
    }

    @Test
    void aFaultOfTwoLinesIsSaidOnceAndKeepsTheKeys() {
        try (Walk walk = Walk.empty(24, 80)) {
            walk.type("nProbe").press(SAVE).press(Key.Named.ENTER);
            walk.type("n").press(Key.Named.DOWN).type("tall").press(SAVE);

            assertThat(foot(walk)).contains("F1 help", "Ctrl-S save", "Esc back");
            assertThat(walk.screen()).containsOnlyOnce("The length \"tall\" is not a number");
            assertThat(walk.screen()).contains("! Height: The length");
        }
    }

    @Test
    void aFaultOfOneLineIsSaidOnce() {
        try (Walk walk = Walk.empty(24, 80)) {
            walk.type("n").press(SAVE);

            assertThat(walk.screen())
                    .containsOnlyOnce("This must be filled in.")
                    .contains("! Name: This must");
            assertThat(foot(walk)).contains("Ctrl-S save");
        }
    }
}
