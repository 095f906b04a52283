package thalweg.tui.screen;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import thalweg.tui.core.Key;

/** What is said in the foot of what was saved although it contradicts the records. */
final class RemarkWalkTest {

    private static final Key SAVE = Key.ctrl('s');

    @Test
    void aCanyonWithTheNameOfAnotherIsSavedWithARemark() {
        try (Walk walk = Walk.empty(24, 80)) {
            walk.type("nProbe").press(SAVE);
            assertThat(walk.screen()).contains("Saved.").doesNotContain("Another canyon");

            walk.type("nprobe").press(SAVE);
            assertThat(walk.screen()).contains("Saved. But: Another canyon is called \"probe\" too");
        }
    }

    @Test
    void aPlaceThatRunsBackwardsAndAnInspectionBeforeThePlacingAreRemarked() {
        try (Walk walk = Walk.empty(24, 80)) {
            walk.type("nProbe").press(SAVE).press(Key.Named.ENTER);
            walk.type("n").press(Key.Named.DOWN, 2).type("50 m").press(SAVE);
            assertThat(walk.screen()).doesNotContain("But:");

            walk.type("n").press(Key.Named.DOWN, 2).type("20 m").press(SAVE);
            assertThat(walk.screen()).contains("Saved. But: place 2: is at 20 m along the line, but place 1");

            walk.type("stop").press(SAVE).press(Key.Named.DOWN).press(Key.Named.ENTER);
            walk.type("a").press(SAVE).type("pbolt").press(Key.Named.DOWN, 7).type("2020");
            walk.press(SAVE);
            walk.type("i").press(Key.Named.UP, 3).press(Key.ctrl('u')).type("2015");
            walk.press(Key.Named.DOWN, 3).type("s").press(SAVE);
            assertThat(walk.screen())
                    .contains("Saved. But: place 2 / top / bolt: was inspected on 2015, before it was");
        }
    }

    @Test
    void aDateBefore1900IsRefusedWhereItIsTyped() {
        try (Walk walk = Walk.sample(24, 80)) {
            walk.press(Key.Named.ENTER).press(Key.Named.DOWN, 2).press(Key.Named.ENTER);
            walk.type("i").press(Key.Named.UP, 3).press(Key.ctrl('u')).type("1850");

            assertThat(walk.screen()).contains("1850 lies before 1900; was another year meant?");
        }
    }
}
