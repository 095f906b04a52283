package thalweg.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class CommandsTest {

    private static final String RECORDS = """
        {"format": "thalweg records", "version": 1, "canyons": [
          {"name": "Probe Ñandú", "region": "Nowhere", "invented": true, "french_grade": "v4 a3 III", "line": [
            {"kind": "drop", "height_cm": 1800, "stations": [
              {"name": "first", "side": "left", "rope_needed_cm": 2000, "anchors": [{"role": "main", "parts": [
                {"label": "left bolt", "kind": "bolt", "placed": "2019-06", "strength_n": 25000, "inspections": [
                  {"on": "2024-05-01", "found": "sound", "by": "Ann"},
                  {"on": "2024-05-01", "found": "worn", "by": "Bo"}]},
                {"label": "webbing", "kind": "webbing", "inspections": [{"on": "2025", "not_seen": true}]}]}]},
              {"name": "first high", "anchors": []}]}]},
          {"name": "Probe Two"}]}
        """;

    @TempDir
    private Path home = Path.of("");

    private Shell shell = new Shell(Path.of(""));

    @BeforeEach
    void openShell() {
        shell = new Shell(home);
    }

    private Path write(String name, String text) {
        try {
            return Files.writeString(home.resolve(name), text);
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    private void takeIn() {
        assertThat(shell.run("import", write("records.json", RECORDS).toString(), "--accept")
                        .code())
                .isZero();
    }

    @Test
    void readingWithoutADatabaseSaysSoAndMakesNone() {
        Shell.Ran ran = shell.run("list");

        assertThat(ran.code()).isEqualTo(3);
        assertThat(ran.err()).startsWith("There is no database at ");
        assertThat(shell.folders().data()).doesNotExist();
    }

    @Test
    void importWritesNothingUntilItIsAccepted() {
        String file = write("records.json", RECORDS).toString();

        Shell.Ran asked = shell.run("import", file);
        Shell.Ran dry = shell.run("import", file, "--dry-run");
        Shell.Ran refused = shell.typing("no\n", "import", file);

        assertThat(asked.code()).isEqualTo(1);
        assertThat(dry.code()).isZero();
        assertThat(refused.code()).isEqualTo(1);
        assertThat(asked.out()).contains("8 new things, 3 new entries, 0 changed things");
        assertThat(shell.folders().database()).doesNotExist();

        assertThat(shell.typing("yes\n", "import", file).code()).isZero();
        assertThat(shell.run("list").out()).contains("Probe Ñandú (invented)", "v4 a3 III", "18 m", "~ worn");
    }

    @Test
    void wordsFindWithoutAccentsAndCase() {
        takeIn();

        assertThat(shell.run("list", "nandu").out()).contains("Probe Ñandú").doesNotContain("Probe Two");
        assertThat(shell.run("list", "nothing", "fits").code()).isEqualTo(1);
    }

    @Test
    void aNameThatFitsSeveralListsThemAndDoesNothing() {
        takeIn();

        Shell.Ran ran = shell.run("show", "probe");

        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).contains("fits several canyons", "Probe Two", "Probe Ñandú");
        assertThat(ran.out()).isEmpty();
    }

    @Test
    void coordinatesOfPlacesAndStationsAreShownWhereTheyAreKnown() {
        takeIn();
        assertThat(shell.run("show", "nandu").out()).doesNotContain("COORDINATES");

        write("placed.json", """
            {"format": "thalweg records", "version": 1, "canyons": [{"name": "Placed", "invented": true, "line": [
              {"kind": "swim", "name": "cold"},
              {"kind": "drop", "position": {"lat_e7": 421234560, "lon_e7": -543210}, "stations": [
                {"name": "top", "position": {"lat_e7": 421234650, "lon_e7": -543300}}]}]}]}
            """);
        shell.run("import", home.resolve("placed.json").toString(), "--accept");

        assertThat(shell.run("show", "placed").out())
                .containsPattern("NO +WHAT +COORDINATES")
                .containsPattern("2 +drop +42\\.123456, -0\\.054321")
                .containsPattern("2 +station top +42\\.123465, -0\\.054330");
        assertThat(shell.run("show", "placed/top").out()).contains("42.123465, -0.054330   42° 07.408' N");
    }

    @Test
    void aStationOfThatVeryNameIsMeantEvenWhereAnotherBeginsWithIt() {
        takeIn();

        assertThat(shell.run("show", "nandu/first").out())
                .contains("Station first:")
                .contains("left bolt");
        assertThat(shell.run("show", "nandu/first high").out()).contains("No anchor is entered yet.");
    }

    @Test
    void anInspectionIsAddedToWhatWasFoundBefore() {
        takeIn();

        Shell.Ran ran = shell.run(
                "inspect",
                "nandu/first",
                "left",
                "doubtful",
                "--left",
                "sound",
                "--on",
                "2026-11",
                "--by",
                "Cyd",
                "--work",
                "tightened,cleaned",
                "--water",
                "low",
                "--note",
                "rust at the nut");

        assertThat(ran.code()).isZero();
        assertThat(ran.err()).contains("left bolt, 2026-11: + sound");
        String shown = shell.run("show", "nandu/first").out();
        assertThat(shown)
                .contains("left bolt: + sound on 2026-11")
                .contains("2026-11  ? doubtful -> left + sound  Cyd; cleaned, tightened; water low; rust at the nut")
                .contains("2024-05-01  + sound  Ann", "2024-05-01  ~ worn  Bo");
    }

    @Test
    void entriesOfOneDayThatDisagreeShowTheWorst() {
        takeIn();

        assertThat(shell.run("show", "nandu/first").out())
                .contains("left bolt: ~ worn on 2024-05-01, entries disagree");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        nandu/first | left    | perfect | 'The condition "perfect" is not known'
        nandu/first | missing | sound   | 'has no part "missing"; it has: left bolt, webbing.'
        nowhere     | left    | sound   | 'There is no station named "nowhere"'
        """)
    void whatCannotBeInspectedIsNamed(String station, String part, String condition, String sentence) {
        takeIn();

        Shell.Ran ran = shell.run("inspect", station, part, condition);

        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).contains(sentence);
    }

    @Test
    void aDateThatHasNotComeIsRefused() {
        takeIn();

        Shell.Ran ran = shell.run("inspect", "nandu/first", "left", "sound", "--on", "2026-11-26");

        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).contains("2026-11-26 has not come yet");
    }

    @Test
    void everyFaultOfAFileIsNamedWithItsLine() {
        String broken = RECORDS.replace("\"side\": \"left\"", "\"side\": \"up\"")
                .replace("\"by\": \"Bo\"", "\"bye\": \"Bo\"")
                .replace("\"placed\": \"2019-06\"", "\"placed\": \"2019-13\"");

        Shell.Ran ran = shell.run("import", write("broken.json", broken).toString(), "--accept");

        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err())
                .contains("3 things are wrong")
                .contains("line 4, canyons[0].line[0].stations[0].side: is \"up\"")
                .contains("line 7, canyons[0].line[0].stations[0].anchors[0].parts[0].inspections[1].bye")
                .contains("placed: is \"2019-13\"");
        assertThat(shell.run("list").out()).isEmpty();
    }

    @Test
    void whatIsNoFileOfRecordsIsRefusedInOneSentence() {
        assertThat(shell.run("import", write("a.json", "{\"format\": 1").toString())
                        .err())
                .contains("ends in the middle, at line 1");
        assertThat(shell.run("import", home.resolve("missing.json").toString()).err())
                .startsWith("There is no file ");
        assertThat(shell.run("import", home.toString()).err()).contains("is a folder");
    }

    @Test
    void anExportComesBackAsNothingNew() {
        takeIn();
        Path file = home.resolve("out.json");

        Shell.Ran written = shell.run("export", "--out", file.toString());
        Shell.Ran again = shell.run("export", "--out", file.toString());
        Shell.Ran back = shell.run("import", file.toString());

        assertThat(written.code()).isZero();
        assertThat(again.err()).contains("is there already");
        assertThat(back.code()).isZero();
        assertThat(back.out()).contains("Nothing new in 2 canyons");
        assertThat(file).hasContent(shell.run("export").out());
    }

    @Test
    void aForeignFileIsLeftAlone() throws IOException {
        Path file = write("notes.txt", "shopping list");

        Shell.Ran ran = shell.run("list", "--db", file.toString());

        assertThat(ran.code()).isEqualTo(3);
        assertThat(ran.err()).contains("is not a Thalweg database");
        assertThat(Files.readString(file)).isEqualTo("shopping list");
    }

    @Test
    void wrongUseIsOneSentenceWithTheWayToHelp() {
        Shell.Ran ran = shell.run("show");

        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err().lines()).hasSize(1);
        assertThat(ran.err()).contains("See thalweg show --help.");
    }

    @Test
    void everyCommandHasHelpOnStandardOutput() {
        for (String command : new String[] {"list", "show", "inspect", "import", "export", "check"}) {
            Shell.Ran ran = shell.run(command, "--help");

            assertThat(ran.code()).as(command).isZero();
            assertThat(ran.out()).as(command).startsWith("thalweg " + command).contains("--db");
        }
    }

    @Test
    void checkFindsNothingInASoundDatabase() {
        takeIn();

        assertThat(shell.run("check").code()).isZero();
        assertThat(shell.run("check", "--rebuild").out()).endsWith("No record contradicts another.\n");
    }
}
