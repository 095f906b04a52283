package thalweg.tui.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import thalweg.text.Width;
import thalweg.tui.core.Key;
import thalweg.tui.core.Message;
import thalweg.tui.shell.Reaction;

final class BrowseTest {

    private static final Pattern GRADES = Pattern.compile(" (v\\d a\\d|\\d [ABC]|unknown)");

    @Test
    void theProgramOpensOnTheCanyons() {
        try (Walk walk = Walk.sample(24, 80)) {
            assertThat(walk.screen())
                    .contains(
                            "Gorge de l'Éclusaune (invented)", "Ranura de Ombreñal (invented)", "v5 a4 IV / 4 C2 III R")
                    .contains("? help", "Enter open", "/ search");
        }
    }

    @Test
    void anEmptyDatabaseSaysWhatToDoFirst() {
        try (Walk walk = Walk.empty(24, 80)) {
            assertThat(walk.screen())
                    .contains("No canyons yet.", "n enters the first one", "i takes in a file", "v goes to the demo");
            assertThat(walk.press(Key.Named.ENTER).screen()).contains("There is no canyon to open.");
        }
    }

    @Test
    void searchFindsAsOneTypesWithoutAccents() {
        try (Walk walk = Walk.sample(24, 80)) {
            walk.type("/").type("ombre");

            assertThat(walk.screen()).contains("Ranura de Ombreñal").doesNotContain("Gorge de");
            assertThat(walk.screen()).contains("1 of 2");

            walk.type("xx");
            assertThat(walk.screen()).contains("No canyon and no station has these words.");

            walk.press(Key.Named.ESCAPE);
            assertThat(walk.screen()).contains("Gorge de l'Éclusaune", "Ranura de Ombreñal");
        }
    }

    @Test
    void lettersAreWordsWhileOneSearches() {
        try (Walk walk = Walk.sample(24, 80)) {
            walk.type("/q");

            assertThat(walk.lastOrder()).isEqualTo(Reaction.Order.NONE);
            assertThat(walk.screen()).contains("Search: q");
        }
    }

    @Test
    void enterGoesFromTheListToTheStation() {
        try (Walk walk = Walk.sample(24, 80)) {
            walk.press(Key.Named.ENTER);
            assertThat(walk.screen())
                    .contains("French v5 a4 IV", "longest drop 46 m", "invented for practice, no real place")
                    .contains("2 drop, 8 m, Porte");

            walk.press(Key.Named.DOWN, 2).press(Key.Named.ENTER);
            assertThat(walk.screen()).contains("Station Porte", "left bolt", "+ sound  2026-09-19");
        }
    }

    @Test
    void wideTerminalsShowTheChosenRowBesideTheList() {
        try (Walk walk = Walk.sample(40, 120)) {
            assertThat(walk.screen()).contains("Newest inspection: 2026-09-19, 2 months ago");
            walk.press(Key.Named.DOWN);
            assertThat(walk.screen()).contains("French grade: v3 a1");
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {40, 80, 120})
    void canyonsOfOneNameAreToldApartByTheirRegion(int columns) {
        try (Walk walk = Walk.empty(12, columns)) {
            for (String region : List.of("Upper Valley", "Lower Valley", "")) {
                String name = region.isEmpty() ? "Alone" : "Probe with a name that is long";
                walk.type("n").type(name).press(Key.Named.TAB, 2).type(region).press(Key.ctrl('s'));
            }

            assertThat(walk.screen()).contains(", Upper", ", Lower").containsPattern("Alone +");
        }
    }

    @Test
    void namesInEveryScriptKeepTheColumns() {
        try (Walk walk = Walk.allSamples(24, 80)) {
            List<String> rows = walk.screen()
                    .lines()
                    .filter(line -> GRADES.matcher(line).find())
                    .toList();

            assertThat(rows).hasSize(9).allMatch(row -> Width.of(row) <= 80);
            assertThat(rows.stream().map(row -> beforeGrades(row)).distinct()).hasSize(1);
        }
    }

    /** Cells in front of the grades, which begin with a letter, a digit or the word for what is unknown. */
    private static int beforeGrades(String row) {
        Matcher grades = GRADES.matcher(row);
        assertThat(grades.find()).as(row).isTrue();
        return Width.of(row.substring(0, grades.start()));
    }

    @Test
    void escapeNeverQuits() {
        try (Walk walk = Walk.sample(24, 80)) {
            walk.press(Key.Named.ESCAPE, 5);

            assertThat(walk.lastOrder()).isEqualTo(Reaction.Order.NONE);
            assertThat(walk.screen()).contains("Canyons");
        }
    }

    @Test
    void unitsChangeEverywhereAtOnce() {
        try (Walk walk = Walk.sample(24, 80)) {
            walk.press(Key.Named.ENTER).type("u");

            assertThat(walk.screen()).contains("imperial", "2 drop, 26 ft, Porte", "longest drop 151 ft");
        }
    }

    @Test
    void theListOfKeysCanBeSearchedAndDoesWhatIsChosen() {
        try (Walk walk = Walk.sample(60, 80)) {
            walk.press(Key.Named.ENTER).type("?");
            assertThat(walk.screen()).contains("write sheet", "new place", "new station");

            walk.type("imperial").press(Key.Named.ENTER);
            assertThat(walk.screen()).contains("2 drop, 26 ft, Porte");
        }
    }

    @Test
    void aKeyThatCannotActSaysWhy() {
        try (Walk walk = Walk.sample(24, 80)) {
            walk.press(Key.Named.ENTER).press(Key.Named.DOWN, 2).press(Key.Named.ENTER);
            walk.press(Key.Named.END).type("m");

            assertThat(walk.screen()).contains("An entry stays with what it is about.");
        }
    }

    @Test
    void theMouseChoosesAndOpens() {
        try (Walk walk = Walk.sample(24, 80)) {
            walk.tell(new Message.MousePressed(3, 10));
            assertThat(walk.screen()).contains("> Ranura de Ombreñal");

            walk.tell(new Message.MousePressed(3, 10));
            assertThat(walk.screen()).contains("French v3 a1");
        }
    }

    @Test
    void coordinatesGoToTheClipboard() {
        try (Walk walk = Walk.sample(24, 80)) {
            walk.press(Key.Named.ENTER).type("y");

            assertThat(walk.copied()).isEqualTo("33.146200, -40.771900");
            assertThat(walk.screen()).contains("Copied: 33.146200");
        }
    }

    @Test
    void quittingIsOneKeyWhereNothingIsLost() {
        try (Walk walk = Walk.sample(24, 80)) {
            assertThat(walk.type("q").lastOrder()).isEqualTo(Reaction.Order.QUIT);
        }
    }
}
