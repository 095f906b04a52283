package thalweg.tui.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import thalweg.logbook.GivenSheet;
import thalweg.logbook.LocalRecord;
import thalweg.service.FindRecord;
import thalweg.service.ListGiven;
import thalweg.tui.core.Key;

/** Private notes and sheets that were written, as somebody at the keyboard meets them. */
final class OwnWalkTest {

    private static final Key SAVE = Key.ctrl('s');

    @TempDir
    private Path folder = Path.of("");

    private static Walk atCanyon(int rows, int columns) {
        return Walk.sample(rows, columns).type("/éclus").press(Key.Named.ENTER);
    }

    private static LocalRecord local(Walk walk) {
        FindRecord find = new FindRecord(walk.session());
        return find.local(find.canyon("éclusaune").canyon().uid());
    }

    private Walk writeSheet(Walk walk, String file, String to) {
        walk.type("w").press(Key.Named.TAB, 2).press(Key.ctrl('u'));
        walk.type(folder.resolve(file).toString()).press(Key.Named.TAB).type(to);
        return walk.press(SAVE);
    }

    @ParameterizedTest
    @CsvSource({"12,40", "24,80", "40,120"})
    void aPrivateNoteStandsWithItsPlaceItsStationAndItsCanyon(int rows, int columns) {
        try (Walk walk = atCanyon(rows, columns)) {
            walk.type("v").type("ask the shepherd").press(SAVE);
            assertThat(walk.screen()).containsPattern("1 walk, Sheepf.*\\[v]");
            walk.press(Key.Named.ENTER);
            assertThat(walk.screen()).contains("Private, stays here", "ask the shepherd");
            walk.press(Key.Named.ESCAPE);

            walk.press(Key.Named.DOWN, 2).type("v").type("loose block above").press(SAVE);
            walk.press(Key.Named.ENTER);
            assertThat(walk.screen()).containsPattern("Station Porte.*\\[v] ~ worn");
            walk.press(Key.Named.ENTER);
            assertThat(walk.screen()).contains("Private, stays here", "loose block above");
            walk.press(Key.Named.ESCAPE)
                    .type("v")
                    .press(Key.ctrl('u'))
                    .type("block is gone")
                    .press(SAVE);
            walk.press(Key.Named.ENTER);
            assertThat(walk.screen()).contains("block is gone");
            walk.press(Key.Named.ESCAPE, 2);

            walk.type("V").type("closed next year?").press(SAVE);
            walk.type("d");
            assertThat(walk.screen()).contains("Private, stays here", "closed next year?");
            assertThat(local(walk).notes()).hasSize(3);
        }
    }

    @Test
    void anEmptiedNoteIsTakenAway() {
        try (Walk walk = atCanyon(24, 80)) {
            walk.type("v").type("ask the shepherd").press(SAVE);
            walk.type("v").press(Key.ctrl('u')).press(SAVE);

            assertThat(local(walk).notes()).isEmpty();
            assertThat(walk.screen()).doesNotContain("[v]");
        }
    }

    @Test
    void theStationsSummaryOnTheClipboardHoldsNothingPrivate() {
        try (Walk walk = atCanyon(24, 80)) {
            walk.press(Key.Named.DOWN, 2).type("v").type("MARKER").press(SAVE);
            walk.press(Key.Named.ENTER).type("y");

            assertThat(walk.copied()).contains("Station Porte").doesNotContain("MARKER");
        }
    }

    @Test
    void aCanyonWithoutALineTakesAPrivateNoteOnItself() {
        try (Walk walk = Walk.empty(24, 120)) {
            walk.type("n").type("Probe").press(SAVE).press(Key.Named.ENTER).type("v");
            assertThat(walk.screen()).contains("V writes a private note on the canyon itself.");

            walk.type("V").type("private words").press(SAVE);
            assertThat(walk.screen()).contains("Private, stays here", "private words");
            walk.press(Key.Named.ESCAPE);
            assertThat(walk.screen()).contains("Private, stays here", "private words");
        }
    }

    @ParameterizedTest
    @CsvSource({"12,40", "24,80", "40,120"})
    void aSheetThatIsGivenIsListedWithWhetherTheRecordsChangedSince(int rows, int columns) {
        try (Walk walk = atCanyon(rows, columns)) {
            walk.type("o");
            assertThat(walk.screen().replaceAll("\\s+", " ")).contains("No sheet of this canyon was written yet.");
            walk.press(Key.Named.ESCAPE);

            writeSheet(walk, "a", "Ana");
            writeSheet(walk, "b", "");
            walk.type("o");
            assertThat(walk.screen()).contains("1      2026-11-25 unchanged Ana");

            walk.press(Key.Named.DOWN).press(Key.Named.ENTER);
            assertThat(walk.screen().replaceAll("[█│\\s]+", " "))
                    .contains("Sheet 1", "Given to: Ana", "File: a.html", "The records are unchanged since.");
            walk.press(Key.Named.ESCAPE, 2)
                    .type("e")
                    .press(Key.Named.TAB, 3)
                    .type("!")
                    .press(SAVE)
                    .type("o");
            assertThat(walk.screen()).contains("1      2026-11-25 changed   Ana");

            List<GivenSheet> given = new ListGiven(walk.session()).of(Optional.empty());
            assertThat(given).hasSize(2);
            walk.press(Key.Named.ESCAPE, 2).type("o");
            assertThat(walk.screen()).contains("Sheets written  2", "changed   Ana, Go");
        }
    }

    @Test
    void theSheetBearsItsNumberAndNobodysName() throws Exception {
        try (Walk walk = atCanyon(24, 160)) {
            writeSheet(walk, "a", "Kurs Vordertal");

            assertThat(walk.screen()).contains("noted as sheet 1");
            assertThat(Files.readString(folder.resolve("a.html")))
                    .contains("sheet 1")
                    .doesNotContain("Vordertal");
        }
    }

    @Test
    void aFileThatIsThereAlreadyIsNotNoted() throws Exception {
        try (Walk walk = atCanyon(24, 160)) {
            Files.writeString(folder.resolve("a.html"), "mine");

            writeSheet(walk, "a", "Ana");

            assertThat(walk.screen()).contains("is there already");
            assertThat(local(walk).sheets()).isEmpty();
        }
    }

    @ParameterizedTest
    @CsvSource({"12,40", "24,80"})
    void theFormOffersWhatChangedSinceAnEarlierSheet(int rows, int columns) throws IOException {
        try (Walk walk = atCanyon(rows, columns)) {
            writeSheet(walk, "a", "Ana");
            walk.type("e").press(Key.Named.TAB, 3).type("!").press(SAVE);
            walk.type("w").fill("File", folder.resolve("b").toString());
            walk.field("Changes since").press(Key.Named.RIGHT);
            assertThat(walk.screen()).contains("< 1, 2026-11-25");
            walk.press(SAVE);
        }
        assertThat(Files.readString(folder.resolve("b.html")))
                .contains("What changed since sheet 1-", "Places and stations", "changed place");
    }

    @ParameterizedTest
    @CsvSource({"12,40", "24,80", "40,120"})
    void aSheetIsLookedAtBeforeItIsWritten(int rows, int columns) throws IOException {
        Path file = folder.resolve("look.html");
        Files.writeString(file, "mine");
        try (Walk walk = atCanyon(rows, columns)) {
            walk.type("w").fill("File", file.toString());
            walk.fill("Part", "2..3").press(Key.Named.F4);
            StringBuilder read = new StringBuilder(walk.screen());
            for (int page = 0; page < 30; page++) {
                read.append(walk.press(Key.Named.PAGE_DOWN).screen());
            }
            assertThat(read.toString().replaceAll("[█│\\s]+", " "))
                    .contains("This would be written to", "about", "kB.", "That file is there already")
                    .contains("=== Gorge de l'Éclusaune ===", "Left out at export", "Station: Porte");
            assertThat(Files.readString(file)).isEqualTo("mine");
            assertThat(local(walk).sheets()).isEmpty();

            walk.press(Key.Named.ESCAPE).field("Part");
            assertThat(walk.screen()).contains("2..3");
            walk.press(SAVE);
            assertThat(walk.screen().replaceAll("\\s+", " ")).contains("is there already");
            walk.fill("Part", "x").press(Key.Named.F4);
            assertThat(walk.screen().replaceAll("\\s+", " ")).contains("cannot be read");
        }
    }

    @Test
    void howMuchStaysHereIsSaidWithTheCanyon() {
        try (Walk walk = atCanyon(40, 120)) {
            writeSheet(walk, "a", "Ana");
            walk.type("tn").press(SAVE).press(Key.Named.ESCAPE).type("d").press(Key.Named.END);

            assertThat(walk.screen()).contains("1 trip: t lists it", "1 sheet written: o lists it");
        }
    }

    @ParameterizedTest
    @CsvSource({"12,40", "24,80"})
    void whatASheetHoldsIsChosenInTheForm(int rows, int columns) throws IOException {
        Path file = folder.resolve("part.txt");
        try (Walk walk = atCanyon(rows, columns)) {
            walk.type("v").type("ask the shepherd").press(SAVE);
            walk.type("w").field("Format").type("pppp");
            walk.fill("File", file.toString());
            walk.fill("Part", "1..40").press(SAVE);
            assertThat(walk.screen().replaceAll("\\s+", " ")).contains("ends behind the last place of");
            walk.fill("Part", "1..3");
            walk.field("Coordinates").type("l");
            walk.field("Names of people").type("l");
            walk.field("Private notes").type("s");
            walk.press(SAVE);
        }
        assertThat(Files.readString(file))
                .contains("places 1 to 3 of", "Left out at export", "PRIVATE", "ask the shepherd")
                .doesNotContain("° 0");
    }
}
