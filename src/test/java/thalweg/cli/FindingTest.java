package thalweg.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Finding by commands: words, filters, hardware, and writing what was found to a file. */
final class FindingTest {

    private static final String RECORDS = """
            {"format": "thalweg records", "version": 1, "canyons": [
              {"name": "Probe Ñandú", "region": "Nowhere", "invented": true, "french_grade": "v4 a3 III",
               "longest_drop_cm": 1800, "approach_min": 30, "descent_min": 120, "exit_min": 30, "line": [
                {"kind": "drop", "height_cm": 1800, "stations": [
                  {"name": "first", "anchors": [{"role": "main", "parts": [
                    {"label": "left bolt", "kind": "bolt", "material": "stainless steel", "batch": "AB-12",
                     "placed": "2019-06", "inspections": [
                      {"on": "2024-05-01", "found": "gone", "left": "worn", "work": ["replaced"]}]},
                    {"label": "=webbing", "kind": "webbing", "batch": "AB13"}]}]}]}]},
              {"name": "Probe Two", "french_grade": "v6 a2 IV"},
              {"name": "Probe Unknown"}]}
            """;

    @TempDir
    private Path home = Path.of("");

    private Shell shell = new Shell(Path.of(""));

    @BeforeEach
    void takeIn() throws IOException {
        shell = new Shell(home);
        Path file = Files.writeString(home.resolve("records.json"), RECORDS);
        assertThat(shell.run("import", file.toString(), "--accept").code()).isZero();
    }

    @Test
    void canyonsThatSurelyFitAreListedAndTheOthersCounted() {
        Shell.Ran ran = shell.run("list", "--vertical", "..5");

        assertThat(ran.code()).isZero();
        assertThat(ran.out()).contains("Probe Ñandú").doesNotContain("Two", "Unknown");
        assertThat(ran.err()).contains("1 more is unknown in this; --unknown-too takes it in.");
    }

    @Test
    void unknownOnesAreListedWhereTheyAreAskedFor() {
        Shell.Ran ran = shell.run("list", "probe", "--longest-drop", "60 ft", "--time", "3 h", "--unknown-too");

        assertThat(ran.out()).contains("Probe Ñandú (invented)  ", "Probe Two (may fit)", "Probe Unknown (may fit)");
        assertThat(ran.err()).isEmpty();
        assertThat(shell.run("list", "--longest-drop", "60 ft", "--unknown-too", "--json")
                        .out())
                .contains("\"unknown_in\": [", "\"longest_drop\"");
    }

    @Test
    void whereNoneFitsTheAnswerIsNo() {
        Shell.Ran ran = shell.run("list", "--vertical", "7", "--region", "nowhere");

        assertThat(ran.code()).isEqualTo(1);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err()).contains("No canyon fits.", "1 more is unknown in this");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            --vertical     | 8      | 'The vertical grade "8" cannot be read; write v1, v2, v3'
            --vertical     | 5..3   | 'The vertical grade "5..3" ends before it begins'
            --vertical     | ..     | 'The vertical grade ".." cannot be read'
            --commitment   | VII    | 'The commitment "VII" cannot be read; write I, II'
            --water        | D      | 'or C for any of the last four'
            --risk         | Z      | 'write none, R, X'
            --longest-drop | deep   | 'The length "deep" is not a number with a unit'
            --longest-drop | -3 m   | 'The longest drop "-3 m" cannot be read; write a length such as 30 m'
            --time         | soon   | 'The time "soon" cannot be read'
            --worst        | bad    | 'write sound, worn, doubtful, unsafe, gone'
            --kind         | bolt   | 'add --parts'
            --csv          |        | '--csv is there for parts'
            """)
    void whatCannotBeReadIsNamedWithWhatWouldDo(String option, String value, String sentence) {
        Shell.Ran ran = value == null ? shell.run("list", option) : shell.run("list", option, value);

        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err()).contains(sentence);
        assertThat(ran.err().lines()).hasSize(1);
    }

    @Test
    void wordsThatOnlyAStationHasAreToldWithTheStation() {
        Shell.Ran ran = shell.run("list", "firs");

        assertThat(ran.code()).isEqualTo(1);
        assertThat(ran.err()).contains("No canyon fits.", "Probe Ñandú/first.");
    }

    @Test
    void partsAreFoundByTheirHardware() {
        Shell.Ran ran = shell.run("list", "--parts", "--batch", "ab12");

        assertThat(ran.code()).isZero();
        assertThat(ran.out())
                .contains("CANYON", "Probe Ñandú (invented)", "first", "left bolt", "stainless steel, AB-12", "~ worn")
                .contains("2019-06, replaced 2024-05-01")
                .doesNotContain("webbing");
        assertThat(ran.err()).contains("the hardware of the record may be the old one");
        assertThat(shell.run("list", "--parts", "nandu", "--kind", "webbing").out())
                .contains("=webbing", "unknown", ". never inspected");
        assertThat(shell.run("list", "--parts", "--json", "ab").out())
                .contains("\"replaced_since\": \"2024-05-01\"", "\"station\": \"first\"", "\"batch\": \"AB13\"");
    }

    @Test
    void partsOfWhichNobodyRecordedTheBatchAreCountedAndListedWhenAsked() {
        Shell.Ran ran = shell.run("list", "--parts", "--batch", "ab12", "--material", "stainless");
        assertThat(ran.out()).contains("left bolt").doesNotContain("=webbing");
        assertThat(ran.err()).doesNotContain("=webbing");

        Shell.Ran steel = shell.run("list", "--parts", "--batch", "ab13", "--material", "nylon");
        assertThat(steel.code()).isEqualTo(1);
        assertThat(steel.err())
                .contains("1 part fits in all else and may be among them, but its material or batch was not recorded;"
                        + " --unknown-too lists it too.");

        String[] asked = {"list", "--parts", "--batch", "ab13", "--material", "nylon", "--unknown-too"};
        assertThat(shell.run(asked).out()).contains("=webbing", "(may fit: material unknown)");
        assertThat(shell.run(asked).err()).contains("listed last.");
        assertThat(shell.run(asked).code()).isZero();
        assertThat(shell.run(with(asked, "--json")).out())
                .containsPattern("\"unknown_in\": \\[\\s*\"material\"\\s*\\]");
        assertThat(shell.run(with(asked, "--csv")).out()).contains(",canyon_uid,may_fit\r\n", ",yes\r\n");
    }

    private static String[] with(String[] arguments, String last) {
        return Stream.concat(Stream.of(arguments), Stream.of(last)).toArray(String[]::new);
    }

    @Test
    void aPartThatIsNotThereIsAnAnswerToo() {
        assertThat(shell.run("list", "--parts", "nothing").code()).isEqualTo(1);
        assertThat(shell.run("list", "--parts", "--kind", "glue").err())
                .contains("The kind \"glue\" is not known; it is one of: bolt, piton");
        assertThat(shell.run("list", "--parts", "--vertical", "3").err())
                .contains("--parts lists parts of all canyons");
    }

    @Test
    void partsAreWrittenAsCsvAndNoFileIsReplacedUnasked() {
        Path file = home.resolve("parts.csv");

        Shell.Ran written = shell.run("list", "--parts", "--csv", "--out", file.toString());
        Shell.Ran again = shell.run("list", "--parts", "--csv", "--out", file.toString());

        assertThat(written.code()).isZero();
        assertThat(written.out()).isEmpty();
        assertThat(file).content().startsWith("canyon,station,part,").contains("left bolt", "'=webbing");
        assertThat(again.code()).isEqualTo(2);
        assertThat(again.err()).contains("is there already");
    }

    @Test
    void exactlyTheCanyonsThatAreFoundAreExported() {
        Shell.Ran ran = shell.run("export", "--vertical", "5..");
        Shell.Ran words = shell.run("export", "--matching", "nandu");

        assertThat(ran.out()).contains("Probe Two").doesNotContain("Ñandú", "Probe Unknown");
        assertThat(ran.err()).contains("1 more is unknown in this");
        assertThat(words.out()).contains("Ñandú").doesNotContain("Probe Two");
    }

    @Test
    void nothingIsExportedWhereNothingFits() {
        Path file = home.resolve("none.json");

        Shell.Ran ran = shell.run("export", "--vertical", "7", "--out", file.toString());

        assertThat(ran.code()).isEqualTo(1);
        assertThat(ran.err()).contains("No canyon fits; nothing was written.");
        assertThat(file).doesNotExist();
        assertThat(shell.run("export", "nandu", "--vertical", "3").err()).contains("named or searched for");
    }
}
