package thalweg.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A group that takes twice as long. By the figures the two rig 8 min, take 5.5 min each at a drop of 25 m and 4.2 at one of 12,
 * and pull 4: from 5 min after the beginning of the line until 28, 48.4 and 66.4, legs of 23, 20.4 and 18 min.
 */
final class OwnPaceCommandTest {

    private static final String RECORDS = """
            {"format": "thalweg records", "version": 1, "canyons": [
              {"name": "Klamm", "approach_min": 60, "exit_min": 30, "line": [
                {"kind": "drop", "name": "Erste", "distance_cm": 10000, "height_cm": 2500},
                {"kind": "drop", "name": "Zweite", "distance_cm": 10000, "height_cm": 1200},
                {"kind": "drop", "name": "Dritte", "distance_cm": 10000, "height_cm": 0}]}]}
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

    private String enter(String... more) {
        String[] whole = new String[more.length + 6];
        System.arraycopy(new String[] {"trip", "klamm", "--person", "Ana, lead", "--person", "Bo"}, 0, whole, 0, 6);
        System.arraycopy(more, 0, whole, 6, more.length);
        return shell.run(whole).err().replaceAll("(?s).*trip ([0-9a-f-]{36})\\..*", "$1");
    }

    /** Reached at 9:00, left after 46, 41 and 36 min. */
    private String slow(String name) {
        String trip = enter("--on", "2026-11-21", "--state", "done", "--name", name);
        assertThat(shell.run(
                                "trip",
                                trip,
                                "--reached",
                                "1=9:00",
                                "--left",
                                "1=9:46",
                                "--left",
                                "2=10:27",
                                "--left",
                                "3=11:03")
                        .code())
                .isZero();
        return trip;
    }

    private Shell.Ran plan(String from, String... more) throws IOException {
        Path file = Files.writeString(
                home.resolve("trip.json"),
                "{\"canyon\": \"klamm\", \"on\": \"2027-07-17\", \"people\": [\"Ana\", \"Bo\"], \"pace_from\": " + from
                        + "}");
        String[] whole = new String[more.length + 2];
        whole[0] = "plan";
        whole[1] = file.toString();
        System.arraycopy(more, 0, whole, 2, more.length);
        return shell.run(whole);
    }

    private static String words(Shell.Ran ran) {
        return ran.out().replaceAll("\\s+", " ");
    }

    @Test
    void aTripThatWasDoneSaysHowItWentAgainstTheFigures() {
        String trip = slow("course");

        assertThat(shell.run("trip", trip).out()).contains("Took 2.00 times as long as by the figures, by 3 legs.");
    }

    @Test
    void aPlanGoesByTheTripsThatAreNamed() throws IOException {
        String trip = slow("course");

        assertThat(words(plan("[\"course\"]")))
                .contains(
                        "Your own pace, as asked for: by 3 legs on 1 trip, all takes 2.00 times as long as by the figures")
                .contains("Fewer than 3 trips say little of how days differ")
                .contains("course, 2026-11-21: Took 2.00 times as long");
        assertThat(plan("[\"" + trip + "\"]", "--json").out())
                .contains("\"factor\": 2,", "\"legs\": 3,", "\"used\": true", "\"spread\": 0.25");
        assertThat(words(plan("[]")))
                .contains("Your own pace was asked for, but 0 legs on 0 trips are too few to tell (it takes 3)");
        assertThat(plan("[\"nobody\"]").err()).contains("No trip that was done has the id or the name \"nobody\"");
    }

    @Test
    void withoutBeingAskedNoPlanGoesByIt() throws IOException {
        slow("course");
        Path file = Files.writeString(
                home.resolve("trip.json"), "{\"canyon\": \"klamm\", \"on\": \"2027-07-17\", \"people\": [\"Ana\"]}");

        assertThat(shell.run("plan", file.toString()).out()).doesNotContain("Your own pace");
        assertThat(shell.run("plan", file.toString(), "--json").out()).contains("\"pace\": null");
    }

    @Test
    void aTripThatIsTakenOutOrCalledOffTeachesNothing() throws IOException {
        String trip = slow("course");
        slow("other");
        shell.run("trip", trip, "--state", "called-off");
        assertThat(plan("[\"course\"]").err()).contains("No trip that was done");
        assertThat(words(plan("[\"" + trip + "\"]"))).contains("0 legs on 0 trips are too few");

        shell.run("trip", trip, "--take-out", "entered twice");
        assertThat(plan("[\"" + trip + "\"]").err()).contains("No trip that was done");
    }

    @Test
    void aTripKeepsFromWhichOthersItsPaceComesAndHowManySetsLeapfrog() {
        String trip = enter("--rope-sets", "2", "--pace-from", "same-name");

        assertThat(shell.run("trip", trip).out()).contains("Rope sets: 2\n", "Pace: like trips of this name\n");
        assertThat(shell.run("trip", trip, "--rope-sets", "9").err()).contains("write one from 1 to 6");
        assertThat(shell.run("trip", trip, "--pace-from", "best").err()).contains("it is one of same-name, all");
        shell.run("trip", trip, "--rope-sets", "", "--pace-from", "");
        assertThat(shell.run("trip", trip).out()).doesNotContain("Rope sets", "Pace");
    }
}
