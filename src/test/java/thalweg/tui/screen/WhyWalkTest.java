package thalweg.tui.screen;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import thalweg.tui.core.Key;

/** Why the figures of a rig are what they are, from its screen and back. */
final class WhyWalkTest {

    private static Walk atPorte(int rows, int columns) {
        Walk walk = Walk.sample(rows, columns);
        return walk.press(Key.Named.ENTER)
                .press(Key.Named.DOWN, 2)
                .press(Key.Named.ENTER)
                .type("r");
    }

    private static String words(Walk walk) {
        return walk.screen().replaceAll("[│█\\s]+", " ");
    }

    /** Down to the figure of that label. */
    private static void goTo(Walk walk, String label) {
        for (int i = 0; i < 60; i++) {
            if (words(walk).contains(" " + label + ": ")) {
                return;
            }
            walk.press(Key.Named.DOWN);
        }
        throw new AssertionError("no figure " + label + ":\n" + walk.screen());
    }

    @ParameterizedTest
    @CsvSource({"24, 80", "40, 120", "12, 40"})
    void eachFigureIsExplainedAndEscapeGoesBackToTheRig(int rows, int columns) {
        try (Walk walk = atPorte(rows, columns)) {
            walk.type("w");
            assertThat(words(walk)).contains("Why these figures", "Pull of the load: 0.98 kN (100 kg)");

            goTo(walk, "Pull on left bolt at the aim");
            StringBuilder read = new StringBuilder(words(walk));
            for (int i = 0; i < 12; i++) {
                read.append(words(walk.press(Key.Named.PAGE_DOWN)));
            }
            assertThat(read)
                    .contains("Three forces in balance", "0.52 kN", "Rests on:")
                    .contains("Of this nobody stated:", "(start value)", "It is not:");
            walk.press(Key.Named.ESCAPE);
            assertThat(walk.screen()).contains("Rig at Porte");
        }
    }

    @Test
    void whatWasStudiedAndTheSwungLoadAreExplainedToo() {
        try (Walk walk = atPorte(40, 120)) {
            walk.type("o")
                    .fill("Sway", "20°")
                    .press(Key.ctrl('s'))
                    .type("bp...")
                    .type("w");

            goTo(walk, "Load swung to 6.0°");
            goTo(walk, "Best focus");
            goTo(walk, "Range of the peaks after the loss of left bolt");
        }
    }

    @Test
    void withoutAnAnswerThereIsNothingToExplain() {
        try (Walk walk = atPorte(40, 120)) {
            walk.press(Key.Named.LEFT, 21).press(Key.Named.UP, 42).type("w");

            assertThat(walk.screen()).contains("Rig at Porte", "There is no answer to explain.");
        }
    }
}
