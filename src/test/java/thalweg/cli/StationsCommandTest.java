package thalweg.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class StationsCommandTest {

    private static final String RECORDS = """
            {"format": "thalweg records", "version": 1, "canyons": [
              {"name": "Klamm", "region": "North", "line": [
                {"kind": "drop", "height_cm": 1800, "stations": [
                  {"name": "=S1", "anchors": [{"role": "main", "parts": [
                    {"label": "bolt", "kind": "bolt", "inspections": [{"on": "2020-05-01", "found": "sound"}]},
                    {"label": "new", "kind": "bolt"}]}]}]}]},
              {"name": "Other", "invented": true, "line": [
                {"kind": "swim"},
                {"kind": "drop", "stations": [{"name": "S2"}, {"name": "S3", "anchors": [{"role": "main", "parts": [
                    {"label": "old", "kind": "bolt", "inspections": [{"on": "2019", "found": "gone"}]}]}]}]}]}]}
            """;

    @TempDir
    private Path home = Path.of("");

    private Shell shell = new Shell(Path.of(""));

    @BeforeEach
    void openShell() throws IOException {
        shell = new Shell(home);
        Path file = Files.writeString(home.resolve("records.json"), RECORDS);
        assertThat(shell.run("import", file.toString(), "--accept").code()).isZero();
    }

    private static String words(String text) {
        return text.replaceAll(" +", " ").replaceAll("(?m) 0\\S+$", "");
    }

    @Test
    void theLongestNotLookedAtStandsFirst() {
        Shell.Ran ran = shell.run("stations");

        assertThat(ran.code()).isZero();
        assertThat(words(ran.out()).lines().skip(1))
                .containsExactly(
                        "S2 Other (invented) 2 drop no parts yet never",
                        "=S1 Klamm 1 drop, 18 m + sound +1 unseen 2 2020-05-01, 1 never",
                        "S3 Other (invented) 2 drop x gone 1 2019");
    }

    @Test
    void itCanBeSortedOtherwise() {
        assertThat(words(shell.run("stations", "--sort", "condition").out())
                        .lines()
                        .skip(1))
                .first()
                .asString()
                .startsWith("S3");
        assertThat(words(shell.run("stations", "--sort", "canyon").out())
                        .lines()
                        .skip(1))
                .first()
                .asString()
                .startsWith("=S1");
        Shell.Ran wrong = shell.run("stations", "--sort", "age");
        assertThat(wrong.code()).isEqualTo(ExitCodes.WRONG_INPUT);
        assertThat(wrong.err().lines()).hasSize(1);
    }

    @Test
    void wordsNarrowItDown() {
        assertThat(shell.run("stations", "north").out()).contains("=S1").doesNotContain("Other");
        Shell.Ran none = shell.run("stations", "nowhere");
        assertThat(none.code()).isEqualTo(ExitCodes.NO);
        assertThat(none.err()).isEqualTo("No station fits.\n");
    }

    @Test
    void jsonLeavesOutWhatIsUnknown() {
        assertThat(shell.run("stations", "s1", "--json").out())
                .contains("\"oldest_look\": \"2020-05-01\"", "\"height_cm\": 1800", "\"worst_condition\": \"sound\"");
        assertThat(shell.run("stations", "s2", "--json").out())
                .contains("\"parts\": 0")
                .doesNotContain("oldest_look", "worst_condition", "height_cm");
    }

    @Test
    void csvIsGuardedAgainstFormulas() {
        String csv = shell.run("stations", "--csv").out();
        assertThat(csv)
                .startsWith("station,canyon,place,place_kind,height_cm,parts,")
                .contains("\r\n'=S1,Klamm,1,");
        assertThat(shell.run("stations", "--csv", "--json").code()).isEqualTo(ExitCodes.WRONG_INPUT);
    }
}
