package thalweg.tui.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import thalweg.tui.core.Key;

/** The stations of all canyons. */
final class StationsWalkTest {

    private static final Map<String, Consumer<Walk>> PLACES = new TreeMap<>(Map.of(
            "stations", walk -> walk.type("s").press(Key.Named.DOWN, 2),
            "stations-by-name", walk -> walk.type("sss").press(Key.Named.END),
            "stations-found", walk -> walk.type("s/dri"),
            "stations-none", walk -> walk.type("s/xyz"),
            "write-stations", walk -> walk.type("sw")));

    @TempDir
    private Path folder = Path.of("");

    /** The row with the sign of the chosen one. */
    private static String chosen(Walk walk) {
        return walk.screen()
                .lines()
                .filter(line -> line.startsWith("> "))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void theLongestNotLookedAtStandsFirstAndEnterOpensIt() {
        try (Walk walk = Walk.allSamples(24, 80)) {
            walk.type("s");
            assertThat(walk.screen()).contains("Stations  1 of ", "longest not looked at first");
            assertThat(chosen(walk)).contains("never");

            walk.type("/rideau");
            assertThat(walk.screen()).contains("1 of 1 found");
            walk.press(Key.Named.ENTER);
            assertThat(walk.screen()).contains("Rideau").contains("main anchor");
        }
    }

    @Test
    void whoeverSortsSeesWhatComesFirst() {
        try (Walk walk = Walk.allSamples(24, 80)) {
            walk.type("s").press(Key.Named.DOWN, 7);
            for (String order :
                    new String[] {"worst condition first", "by name", "by canyon", "longest not looked at"}) {
                walk.press(Key.Named.DOWN, 3).type("s");
                assertThat(walk.screen()).contains("Stations  1 of 49, " + order);
            }
        }
    }

    @Test
    void whatWasChosenAmongTheFoundStaysChosenWhenTheWordsAreTakenBack() {
        try (Walk walk = Walk.allSamples(24, 80)) {
            walk.type("s/rideau");
            String name = chosen(walk);
            walk.press(Key.Named.ESCAPE);
            assertThat(chosen(walk)).startsWith(name.substring(0, 20));
            walk.press(Key.Named.ESCAPE);
            assertThat(walk.screen()).contains("Canyons  ");
        }
    }

    @Test
    void endShowsTheLastAndHomeTheFirst() {
        try (Walk walk = Walk.allSamples(24, 80)) {
            walk.type("s").press(Key.Named.END);
            assertThat(walk.screen()).containsPattern("Stations  (\\d+) of \\1,");
            walk.press(Key.Named.HOME);
            assertThat(walk.screen()).contains("Stations  1 of ");
        }
    }

    @Test
    void theListGoesToAFile() throws Exception {
        Path file = folder.resolve("stations.csv");
        try (Walk walk = Walk.sample(24, 80)) {
            walk.type("sw").press(Key.ctrl('u')).type(file.toString()).press(Key.ctrl('s'));
            assertThat(Files.readString(file))
                    .startsWith("station,canyon,place,")
                    .contains("Rideau,");
        }
    }

    @Test
    void nothingThereSaysSo() {
        try (Walk walk = Walk.empty(24, 80)) {
            assertThat(walk.type("s").screen()).contains("There are no stations yet");
        }
    }

    @Test
    void everyScreenLooksAsItDidAtFourSizes() {
        Sizes.lookAsTheyDid("screen/stations-", PLACES);
    }

    @Test
    void everyScreenDrawsAtEverySize() {
        Sizes.drawEverywhere(PLACES, Set.of("stations"));
    }

    @Test
    void atTheSmallestSizeTheHelpIsStillOffered() {
        Sizes.offerHelpAtTheSmallest(PLACES);
    }
}
