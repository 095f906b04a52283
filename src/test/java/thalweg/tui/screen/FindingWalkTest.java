package thalweg.tui.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import thalweg.service.ImportRecords;
import thalweg.tui.core.Key;
import thalweg.tui.core.Message;
import thalweg.tui.shell.Reaction;

/** Finding on the screen: stations among the canyons, the filter, parts, and files of what was found. */
final class FindingWalkTest {

    private static final String RECORDS = """
            {"format": "thalweg records", "version": 1, "canyons": [
              {"name": "Alpha", "region": "Upper Vale", "french_grade": "v4 a3 III", "longest_drop_cm": 1800,
               "line": [{"kind": "drop", "stations": [
                  {"name": "Willow", "anchors": [{"role": "main", "parts": [
                    {"label": "left", "kind": "bolt", "batch": "AB-12", "placed": "2019-06", "inspections": [
                      {"on": "2024-05-01", "found": "gone", "left": "worn", "work": ["replaced"]}]},
                    {"label": "tape", "kind": "webbing", "batch": "AB13"}]}]}]}]},
              {"name": "Beta", "french_grade": "v6 a2 IV", "longest_drop_cm": 6000},
              {"name": "Gamma"}, {"name": "奥秩父沢"}]}
            """;

    @TempDir
    private Path folder = Path.of("");

    private static Walk walk(int rows, int columns) {
        Walk walk = Walk.empty(rows, columns);
        ImportRecords records = new ImportRecords(walk.session());
        records.accept(records.preview("probe", RECORDS.getBytes(StandardCharsets.UTF_8))
                .plan());
        return walk.press(Key.Named.F5);
    }

    /** Fills the field of the form that has the focus, after going down so many. */
    private static Walk filter(Walk walk, int down, String text) {
        return walk.type("f").press(Key.Named.TAB, down).type(text).press(Key.ctrl('s'));
    }

    @Test
    void aStationIsFoundAmongTheCanyonsAndOpened() {
        try (Walk walk = walk(24, 80)) {
            walk.type("/wil");
            assertThat(walk.screen()).contains("0 of 4, 1 station", "> Station Willow, in Alpha");

            walk.press(Key.Named.ENTER);
            assertThat(walk.screen()).contains("Station Willow");

            walk.press(Key.Named.ESCAPE);
            assertThat(walk.screen()).contains("Search: wil", "> Station Willow, in Alpha");
        }
    }

    @Test
    void wordsOfBothShowTheCanyonsFirst() {
        try (Walk walk = walk(40, 120)) {
            walk.type("/al");
            assertThat(walk.screen()).contains("> Alpha").doesNotContain("Station Willow, in");

            walk.type("pha w");
            assertThat(walk.screen()).contains("> Station Willow, in Alpha", "main anchor");
        }
    }

    @Test
    void oneCharacterFindsTheEndOfARun() {
        try (Walk walk = walk(24, 80)) {
            assertThat(walk.type("/沢").screen()).contains("> 奥秩父沢");
        }
    }

    @Test
    void theFilterStandsAboveTheListAndSaysWhatItLeavesOut() {
        try (Walk walk = walk(24, 80)) {
            filter(walk, 7, "30 m");
            assertThat(walk.screen())
                    .contains("Filter: longest drop at most 30 m", "2 more are unknown in this; m shows them too.")
                    .contains("1 of 4", "> Alpha")
                    .doesNotContain("Beta", "Gamma");

            walk.type("m");
            assertThat(walk.screen())
                    .contains("2 of these may fit: they are unknown in this; m hides them.")
                    .contains("(may fit) Gamma", "(may fit) 奥秩父沢")
                    .doesNotContain("Beta");

            walk.type("m").type("c");
            assertThat(walk.screen())
                    .doesNotContain("Filter:", "unknown in this")
                    .contains("Beta", "Gamma");
        }
    }

    @Test
    void theFilterHoldsWithWordsAndComesBackIntoItsForm() {
        try (Walk walk = walk(24, 80)) {
            filter(walk, 0, "..5");
            walk.type("/alp").press(Key.Named.TAB);
            assertThat(walk.screen()).contains("Filter: grade at most v5", "> Alpha", "Search: alp");

            walk.type("f");
            assertThat(walk.screen()).contains("French v", "..v5");
            walk.press(Key.Named.ESCAPE);
            assertThat(walk.screen()).contains("Filter: grade at most v5", "Search: alp");
        }
    }

    @Test
    void aRangeThatCannotBeReadKeepsTheFormOpen() {
        try (Walk walk = walk(24, 80)) {
            filter(walk, 0, "9");

            assertThat(walk.screen()).contains("The vertical grade \"9\" cannot be read", "American class");
            assertThat(walk.lastOrder()).isEqualTo(Reaction.Order.NONE);
        }
    }

    @Test
    void unitsChangeInTheFilterToo() {
        try (Walk walk = walk(24, 80)) {
            filter(walk, 7, "100 ft");
            assertThat(walk.screen()).contains("longest drop at most 30.5 m");

            walk.type("u");
            assertThat(walk.screen()).contains("longest drop at most 100 ft");
        }
    }

    @Test
    void theMouseMeetsTheRowsUnderTheFilter() {
        try (Walk walk = walk(24, 80)) {
            filter(walk, 0, "..7");
            assertThat(walk.screen()).contains("> Alpha");

            walk.tell(new Message.MousePressed(5, 10));
            assertThat(walk.screen()).contains("> Beta");
        }
    }

    @Test
    void partsAreFoundAsOneTypesAndLeadToTheirStation() {
        try (Walk walk = walk(24, 80)) {
            walk.type("p").type("ab12");
            assertThat(walk.screen())
                    .contains("> Alpha", "Willow", "left", "~ worn", "2019-06")
                    .contains("Replaced 2024-05-01, since it was placed")
                    .doesNotContain("tape");

            walk.press(Key.Named.ENTER);
            assertThat(walk.screen()).contains("Station Willow");
            walk.press(Key.Named.ESCAPE);
            assertThat(walk.screen()).contains("Search: ab12");
            walk.press(Key.Named.ESCAPE).press(Key.Named.ESCAPE);
            assertThat(walk.screen()).contains("Canyons");
        }
    }

    @Test
    void whatWasFoundIsWrittenAndNothingIsReplacedUnasked() throws Exception {
        try (Walk walk = walk(24, 120)) {
            Path csv = folder.resolve("ab");
            walk.type("pab").press(Key.Named.TAB).type("w");
            write(walk, csv);
            assertThat(walk.screen()).contains("Written: ");
            assertThat(folder.resolve("ab.csv"))
                    .content()
                    .contains("left,bolt", "tape,webbing")
                    .hasLineCount(3);

            walk.type("w");
            write(walk, csv);
            assertThat(walk.screen()).contains("is there already");
        }
    }

    @Test
    void exactlyTheCanyonsInTheListAreWritten() throws Exception {
        try (Walk walk = walk(24, 120)) {
            filter(walk, 7, "30 m..");
            walk.type("w");
            assertThat(walk.screen()).contains("Write the records of 1 canyon to a file");
            write(walk, folder.resolve("high.json"));

            assertThat(Files.readString(folder.resolve("high.json")))
                    .contains("Beta")
                    .doesNotContain("Alpha", "Gamma");
        }
    }

    private static void write(Walk walk, Path file) {
        walk.press(Key.ctrl('u')).press(Key.Named.END).press(Key.Named.BACKSPACE, 20);
        walk.type(file.toString()).press(Key.ctrl('s'));
    }

    @Test
    void aFilterThatLeavesNothingSaysHowToGoOn() {
        try (Walk walk = walk(24, 80)) {
            filter(walk, 0, "7");

            assertThat(walk.screen())
                    .contains("Filter: grade v7", "2 more are unknown in this")
                    .contains("No canyon surely fits the filter. c clears it, f changes it.");
            assertThat(walk.press(Key.of('w')).screen()).contains("There is no canyon in the list to write.");
        }
    }
}
