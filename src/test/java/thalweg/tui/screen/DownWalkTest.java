package thalweg.tui.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import thalweg.logbook.CanyonRecord;
import thalweg.logbook.Inspection;
import thalweg.service.FindRecord;
import thalweg.testing.GoldenFile;
import thalweg.tui.core.Key;

/** A round down a whole canyon: one letter a part, saved as one change, which one key takes back. */
final class DownWalkTest {

    private static final Key SAVE = Key.ctrl('s');

    private static Walk down(Walk walk) {
        return walk.type("/éclus").press(Key.Named.ENTER).type("ri");
    }

    private static CanyonRecord canyon(Walk walk) {
        return new FindRecord(walk.session()).canyon("éclusaune");
    }

    private static List<Inspection> made(Walk walk) {
        return canyon(walk).stations().stream()
                .flatMap(station -> station.parts().stream())
                .flatMap(part -> part.counting().stream())
                .filter(inspection -> inspection.by().equals("Down"))
                .toList();
    }

    /** Who, and then letters from the first part on. */
    private static Walk letters(Walk walk, String letters) {
        walk.field("By").press(Key.ctrl('u')).type("Down");
        return walk.press(Key.Named.TAB, 3).type(letters);
    }

    @Test
    void oneLetterAPartIsSavedAsOneRoundAndTakenBackAsOne() {
        try (Walk walk = Walk.sample(40, 120)) {
            int rounds = canyon(walk).countingRounds().size();
            letters(down(walk), "nnn");
            walk.press(SAVE);

            assertThat(walk.screen()).contains("Rounds");
            assertThat(canyon(walk).countingRounds()).hasSize(rounds + 1);
            assertThat(made(walk))
                    .hasSize(3)
                    .allSatisfy(inspection -> assertThat(inspection.round())
                            .isEqualTo(made(walk).get(0).round()));
            assertThat(canyon(walk).countingRounds())
                    .extracting(entry -> entry.uid())
                    .contains(made(walk).get(0).round().orElseThrow());

            walk.type("z");
            assertThat(made(walk)).isEmpty();
            assertThat(canyon(walk).countingRounds()).hasSize(rounds);
        }
    }

    @Test
    void nothingIsSavedWhileNoPartHasAnEntry() {
        try (Walk walk = Walk.sample(24, 80)) {
            down(walk).press(SAVE);

            assertThat(walk.screen()).contains("No part has an entry yet");
        }
    }

    @Test
    void whatIsBetterThanItWasAsksForAWord() {
        try (Walk walk = Walk.sample(40, 120)) {
            walk.type("/éclus").press(Key.Named.ENTER).press(Key.Named.DOWN).press(Key.Named.ENTER);
            walk.type("i---s").press(SAVE);
            assertThat(walk.screen()).contains("ring was last found worn and is now sound: nothing mends itself");

            walk.field("ring: note").type("only dirt").press(SAVE);
            assertThat(walk.screen()).doesNotContain("nothing mends itself");
        }
    }

    @Test
    void whatElseThereIsToSayIsAskedOnlyOfPartsWithAnEntry() {
        try (Walk walk = Walk.sample(60, 200)) {
            down(walk);
            assertThat(walk.screen()).doesNotContain(": work done");

            letters(walk, "s");
            while (!walk.screen().contains(": work done")) {
                walk.press(Key.Named.DOWN);
            }
        }
    }

    @Test
    void itLooksAsItDidAtThreeSizes() {
        for (int[] size : List.of(new int[] {12, 40}, new int[] {24, 80}, new int[] {40, 120})) {
            try (Walk walk = Walk.sample(size[0], size[1])) {
                letters(down(walk), "sw");
                GoldenFile.holds("screen/down-" + size[1] + "x" + size[0] + ".txt", walk.screen());
            }
        }
    }
}
