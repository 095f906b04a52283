package thalweg.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is said of an entry that is taken although it contradicts the records. */
final class RemarkTest {

    private static final String RECORDS = """
            {"format": "thalweg records", "version": 2, "canyons": [
              {"name": "Probe", "line": [{"uid": "01970000-0000-7000-8000-000000000011", "kind": "walk", "distance_cm": 500, "name": "In"},
                {"uid": "01970000-0000-7000-8000-000000000012", "kind": "drop", "distance_cm": 900, "name": "Fall", "stations": [{"name": "first", "anchors": [
                {"role": "main", "parts": [
                  {"label": "left", "kind": "bolt", "placed": "2019-06"},
                  {"label": "old", "kind": "piton", "placed": "1850", "inspections": [
                    {"on": "1860", "found": "sound", "by": "Ann"}]}]}]}]}]}]}
            """;

    private static final String WALK = "01970000-0000-7000-8000-000000000011";
    private static final String DROP = "01970000-0000-7000-8000-000000000012";

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
    void anInspectionOlderThanItsPartIsTakenWithARemark() {
        Shell.Ran ran = shell.run("inspect", "probe/first", "left", "worn", "--on", "2015-05-01");

        assertThat(ran.code()).isZero();
        assertThat(ran.err().lines()).hasSize(2);
        assertThat(ran.err())
                .startsWith("Added: Probe/first, left, 2015-05-01")
                .contains(
                        "Remark: place 2 Fall / first / left: was inspected on 2015-05-01, before it was placed (2019-06)");
    }

    @Test
    void aPlaceThatIsMovedSoThatDistancesRunBackwardsIsRemarked() {
        Shell.Ran ran = shell.run("move", WALK, "--after", DROP);

        assertThat(ran.err()).contains("Done: moved", "Remark: place 2 In: is at 5 m along the line, but place 1 Fall");
    }

    @Test
    void whatWasContradictoryBeforeIsNotRemarkedAgain() {
        shell.run("inspect", "probe/first", "left", "worn", "--on", "2015-05-01");

        Shell.Ran ran = shell.run("inspect", "probe/first", "left", "worn", "--on", "2020-05-01");

        assertThat(ran.err()).doesNotContain("Remark");
    }

    @Test
    void aFileMayHoldDatesThatNobodyCouldEnterAndTheCheckNamesThem() {
        Shell.Ran ran = shell.run("check");

        assertThat(ran.code()).isEqualTo(1);
        assertThat(ran.out()).contains("old: An inspection is dated 1860, which lies before 1900.");
    }
}
