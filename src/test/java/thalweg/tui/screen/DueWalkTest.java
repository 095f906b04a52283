package thalweg.tui.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import thalweg.testing.GoldenFile;
import thalweg.tui.core.Key;

/** What is due, on the screen: the list, its reasons, and the marks where parts and stations are shown. */
final class DueWalkTest {

    @TempDir
    private Path folder = Path.of("");

    @Test
    void theMostUrgentStandsFirstAndSaysWhy() {
        try (Walk walk = Walk.sample(40, 120)) {
            walk.type("D");
            assertThat(walk.screen())
                    .contains("Due now: all canyons", "mend before use: unsafe", "It was last found unsafe.")
                    .contains("rule of thumb");

            walk.press(Key.Named.ENTER);
            assertThat(walk.screen()).contains("old piton");
        }
    }

    @Test
    void aheadIsCountedFromToday() {
        try (Walk walk = Walk.sample(24, 80)) {
            walk.type("/éclus").press(Key.Named.ENTER).type("D");
            long now = dueRows(walk);
            assertThat(walk.screen()).contains("Due now: Gorge de l'Éclusaune");

            walk.type("ddd");
            assertThat(walk.screen()).contains("Due within 366 days");
            assertThat(dueRows(walk)).isGreaterThan(now);

            walk.type("d");
            assertThat(dueRows(walk)).isEqualTo(now);
        }
    }

    /** The number behind the title. */
    private static long dueRows(Walk walk) {
        String title = walk.screen().lines().findFirst().orElseThrow();
        return Long.parseLong(title.replaceAll(".*  (\\d+) .*", "$1"));
    }

    /** A hundred are listed at first, more wherever somebody comes near their end, and all are counted. */
    @Test
    void whoeverGoesDownComesToTheLast() {
        try (Walk walk = Walk.allSamples(24, 80)) {
            walk.type("Dddd");
            long all = dueRows(walk);
            assertThat(all).isGreaterThan(200);
            assertThat(walk.screen()).contains("less urgent are read as you go down");

            for (int i = 0; i < 4; i++) {
                walk.press(Key.Named.END);
            }

            assertThat(dueRows(walk)).isEqualTo(all);
            assertThat(walk.screen()).doesNotContain("less urgent");
        }
    }

    @Test
    void wordsNarrowItDownAndEscTakesThemBack() {
        try (Walk walk = Walk.sample(24, 80)) {
            walk.type("D/piton");
            assertThat(walk.screen()).contains("old piton").doesNotContain("black webbing");

            walk.type("zzz");
            assertThat(walk.screen()).contains("No part has these words");

            walk.press(Key.Named.ESCAPE);
            assertThat(walk.screen()).contains("black webbing");

            walk.press(Key.Named.ESCAPE);
            assertThat(walk.screen()).contains("Canyons  2");
        }
    }

    @Test
    void theListGoesToAFile() throws Exception {
        Path file = folder.resolve("due.csv");
        try (Walk walk = Walk.sample(24, 80)) {
            walk.type("Dw").press(Key.ctrl('u')).type(file.toString()).press(Key.ctrl('s'));
            assertThat(Files.readString(file)).contains(",task,reason,due_on,days_over", ",mend,unsafe,2020-10-17,");
        }
    }

    @Test
    void nothingThereSaysSo() {
        try (Walk walk = Walk.empty(24, 80)) {
            assertThat(walk.type("D").screen()).contains("There are no parts yet");
        }
    }

    @Test
    void stationsAndPartsBearAMark() {
        try (Walk walk = Walk.sample(40, 120)) {
            walk.type("/éclus").press(Key.Named.ENTER);
            assertThat(walk.screen()).contains(", due: ");

            walk.type("D").press(Key.Named.ENTER);
            assertThat(walk.screen()).contains("  due");
            while (!walk.screen().contains("The last look: ")) {
                walk.press(Key.Named.DOWN);
            }
        }
    }

    @Test
    void itLooksAsItDidAtThreeSizes() {
        for (int[] size : List.of(new int[] {12, 40}, new int[] {24, 80}, new int[] {40, 120})) {
            try (Walk walk = Walk.sample(size[0], size[1])) {
                walk.type("D").press(Key.Named.DOWN, 2);
                GoldenFile.holds("screen/due-" + size[1] + "x" + size[0] + ".txt", walk.screen());
            }
        }
    }
}
