package thalweg.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class DueCommandTest {

    private static final String RECORDS = """
            {"format": "thalweg records", "version": 1, "canyons": [
              {"name": "Klamm", "region": "North", "line": [
                {"kind": "drop", "stations": [
                  {"name": "S1", "exposure": "marine", "anchors": [{"role": "main", "parts": [
                    {"label": "bolt", "kind": "bolt", "inspections": [{"on": "2020-05-01", "found": "sound"}]},
                    {"label": "strap", "kind": "webbing", "placed": "2019", "inspections": [
                      {"on": "2999-01-01", "found": "sound"}]}]}]}]}]},
              {"name": "Other", "region": "South", "line": [
                {"kind": "drop", "stations": [
                  {"name": "S2", "anchors": [{"role": "main", "parts": [
                    {"label": "=old", "kind": "bolt", "inspections": [{"on": "2020-05-01", "found": "unsafe"}]},
                    {"label": "new", "kind": "bolt"}]}]}]}]}]}
            """;

    @TempDir
    private Path home = Path.of("");

    private Shell shell = new Shell(Path.of(""));

    @BeforeEach
    void openShell() throws IOException {
        shell = new Shell(home);
        Path file = Files.writeString(home.resolve("records.json"), RECORDS.replace("2999-01-01", "2026-01-01"));
        assertThat(shell.run("import", file.toString(), "--accept").code()).isZero();
    }

    private static String words(String text) {
        return text.replaceAll(" +", " ");
    }

    @Test
    void theMostUrgentStandsFirst() {
        Shell.Ran ran = shell.run("due");

        assertThat(ran.code()).isZero();
        assertThat(words(ran.out()).lines().skip(1).map(line -> line.replaceAll(" 0\\S+$", "")))
                .first()
                .isEqualTo("Other S2 =old ! unsafe 2020-05-01 mend before use: unsafe");
        assertThat(words(ran.out())).contains("Other S2 new . never inspected examine: never inspected");
        assertThat(words(ran.out())).contains("Klamm S1 bolt + sound 2020-05-01 examine: due for ");
        assertThat(words(ran.out())).contains("Klamm S1 strap + sound 2026-01-01 replace: due for ");
        assertThat(ran.err()).contains("a look is no test");
    }

    /** The columns are as wide as the first rows need; a longer cell further down moves its own row alone. */
    @Test
    void aLongTableIsPrintedAsItComes() {
        StringBuilder out = new StringBuilder();
        RunningColumns columns = new RunningColumns(List.of("A", "B"), out::append);
        for (int i = 0; i < 50; i++) {
            columns.row(List.of("row " + i, "end"));
        }
        assertThat(out.toString().lines()).hasSize(51).first().isEqualTo("A       B");

        columns.row(List.of("a longer row", "end"));
        columns.row(List.of("row", "end"));
        columns.flush();

        assertThat(out.toString().lines().skip(51)).containsExactly("a longer row  end", "row           end");
    }

    @Test
    void wordsAndRegionNarrowItDown() {
        assertThat(shell.run("due", "klamm").out()).contains("bolt").doesNotContain("Other");
        assertThat(shell.run("due", "--region", "south").out()).contains("=old").doesNotContain("Klamm");
        Shell.Ran none = shell.run("due", "nowhere");
        assertThat(none.code()).isEqualTo(ExitCodes.NO);
        assertThat(none.err()).startsWith("No part fits.");
    }

    @Test
    void settingsSayAfterHowLong() throws IOException {
        Path set = Files.writeString(
                home.resolve("set.json"), "{\"due\": {\"marine\": 240, \"examined\": 240, \"textile\": 240}}");

        assertThat(shell.run("due", "klamm", "--settings", set.toString()).err())
                .startsWith("Nothing is due.\n");

        Files.writeString(set, "{\"due\": {\"weekly\": 1, \"worn\": 0}}");
        assertThat(shell.run("due", "--settings", set.toString()).err())
                .contains("due.weekly: is no figure; there are: examined, marine, wet, worn, doubtful, textile.")
                .contains("due.worn:");
    }

    @Test
    void itIsThereForPrograms() {
        assertThat(shell.run("due", "--json", "klamm").out())
                .contains("{\"task\": \"replace\", \"reason\": \"textile\", \"on\": \"2022-01-01\"");
        assertThat(shell.run("due", "--csv").out())
                .contains(",task,reason,due_on,days_over\r\n")
                .contains(",mend,unsafe,2020-05-01,")
                .contains("'=old")
                .contains(",examine,never_seen,,\r\n");
        assertThat(shell.run("due", "--csv", "--json").code()).isEqualTo(ExitCodes.WRONG_INPUT);
        assertThat(shell.run("due", "--within", "-1").err()).isEqualTo("--within is -1; it must be 0 to 36525 days.\n");
    }
}
