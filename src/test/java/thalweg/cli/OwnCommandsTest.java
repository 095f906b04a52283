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

/** The commands for what stays with one database. */
final class OwnCommandsTest {

    private static final String RECORDS = """
        {"format": "thalweg records", "version": 2, "canyons": [
          {"name": "Probe", "region": "Nowhere", "invented": true, "line": [
            {"kind": "drop", "height_cm": 1800, "stations": [{"name": "first"}]}]}]}
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

    private String enter(String... options) {
        String[] whole = new String[options.length + 2];
        whole[0] = "trip";
        whole[1] = "probe";
        System.arraycopy(options, 0, whole, 2, options.length);
        Shell.Ran ran = shell.run(whole);
        assertThat(ran.code()).as(ran.err()).isZero();
        return ran.err().replaceAll("(?s).*trip ([0-9a-f-]{36})\\..*", "$1");
    }

    @Test
    void timesAreNotedByTheNumberOrNameOfAPlace() {
        String trip = enter("--on", "2026-11-21");
        assertThat(shell.run("trip", trip, "--reached", "1=10:05", "--left", "FIRST=10:40")
                        .err())
                .startsWith("Changed:");

        assertThat(shell.run("trip", trip).out()).contains("Times noted:\n  1 first: reached 10:05, left 10:40\n");
        assertThat(shell.run("trips", "probe", "--json").out()).contains("\"reached_min\": 605");
        assertThat(shell.run("trip", trip, "--reached", "9=10:05").err())
                .contains("No place on the line is called \"9\"; name one by its number: \"1 first\".");
        assertThat(shell.run("trip", trip, "--reached", "10:05").err()).contains("is no place with its time");
        assertThat(shell.run("trip", trip, "--left", "1=9:00").err()).contains("Left at 9:00, reached at 10:05");
        assertThat(shell.run("trip", trip, "--left", "1=", "--reached", "1=").code())
                .isZero();
        assertThat(shell.run("trip", trip).out()).doesNotContain("Times noted");
        assertThat(shell.run("trip", "probe", "--reached", "1=10:05").err())
                .contains("Times are noted of a trip that is entered");
    }

    @Test
    void aTripIsEnteredShownChangedAndTakenOut() {
        assertThat(shell.run("trips").err()).contains("There are no trips yet");

        String trip = enter("--on", "2026-12-05", "--person", "Ana, lead, 62 kg", "--person", "Bo", "--rope", "60 m");
        assertThat(shell.run("trips").out()).contains("2026-12-05  planned  unnamed trip  Probe (invented)  Nowhere");
        assertThat(shell.run("trip", trip).out())
                .contains("People: 2", "  Ana, lead, 62 kg", "  Bo, role unknown, weight unknown", "  60 m")
                .contains("Weight of 1 of 2 people known, together 62 kg; the rest is unknown.", "Back: unknown");

        Shell.Ran changed = shell.run(
                "trip",
                trip,
                "--state",
                "done",
                "--on",
                "2026-11-21",
                "--back",
                "17:30",
                "--water",
                "high",
                "--rope",
                "");
        assertThat(changed.err()).startsWith("Changed: Probe, trip " + trip);
        assertThat(shell.run("trip", trip, "--units", "imperial").out())
                .contains("State: done", "Back: 17:30", "Water: high", "Ropes: unknown", "Ana, lead, 137 lb");
        assertThat(shell.run("trips", "probe", "--json").out())
                .contains(
                        "\"state\": \"done\"",
                        "\"weight_g\": 62000",
                        "\"back_min\": 1050",
                        "\"canyon_name\": \"Probe\"");

        assertThat(shell.run("trip", trip, "--take-out", "entered twice").err()).isEqualTo("Taken out.\n");
        assertThat(shell.run("trips", "--json").out().strip()).isEqualTo("[]");
        assertThat(shell.run("trip", trip, "--name", "again").err())
                .isEqualTo("There is no canyon and no trip with the id " + trip
                        + "; `list` and `trips` show what there is.\n");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
        --on     | 3000       | The day 3000 lies more than 5 years ahead
        --on     | soon       | The date "soon" cannot be read
        --person | Ana, 5 g   | The weight "5 g" is not between 10 and 300 kg.
        --person | Ana, boss  | "boss" is neither a role
        --rope   | 0 m        | The rope "0 m" is not between 1 and 1000 m long.
        --start  | 25:00      | The time "25:00" does not exist
        --state  | later      | The state "later" is not known; it is one of planned, done, called-off.
        --water  | wet        | The water level "wet" is not known
        --take-out | no reason | "probe" is no id of a trip
        """)
    void whatCannotBeEnteredIsNamedAndNothingIsWritten(String option, String value, String sentence) {
        Shell.Ran ran = shell.run("trip", "probe", option, value);

        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).contains(sentence);
        assertThat(ran.err().lines()).hasSize(1);
        assertThat(shell.run("trips", "--json").out().strip()).isEqualTo("[]");
    }

    @Test
    void aTripWithoutAnythingToEnterSaysHow() {
        Shell.Ran ran = shell.run("trip", "probe");

        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).contains("Say what to enter, as in: trip CANYON --on 2026-06-14");
    }

    @Test
    void aSheetIsNotedWhereItIsGivenToSomebody() throws IOException {
        Path file = home.resolve("probe.txt");
        assertThat(shell.run("given").err()).contains("No sheet was written yet");
        assertThat(shell.run("sheet", "probe", "--given-to", "Ana").err()).contains("--given-to needs --out PATH");

        Shell.Ran ran = shell.run("sheet", "probe", "--as", "text", "--out", file.toString(), "--given-to", "Ana");

        assertThat(ran.err()).matches("Written: .*probe.txt\nNoted as sheet 1-[0-9a-f]{6}\\.\n");
        assertThat(Files.readString(file)).contains("sheet 1");
        assertThat(shell.run("given", "probe").out())
                .containsPattern("1-[0-9a-f]{6}  2026-11-25  Ana       probe.txt  unchanged  Probe \\(inv");
        assertThat(shell.run("show", "probe").out()).endsWith("1 sheet written: see `given`\n");

        Shell.Ran again = shell.run("sheet", "probe", "--as", "text", "--out", file.toString(), "--given-to", "Bo");
        assertThat(again.code()).isEqualTo(2);
        assertThat(again.err()).contains("is there already");
        assertThat(shell.run("given", "--json").out())
                .contains("\"to\": \"Ana\"")
                .doesNotContain("Bo");
    }

    @Test
    void aPrivateNoteIsWrittenShownAndTakenAway() {
        assertThat(shell.run("private", "probe").code()).isEqualTo(1);

        assertThat(shell.run("private", "probe", "--write", "on the canyon").err())
                .isEqualTo("Written; it stays in this database.\n");
        shell.run("private", "probe", "--place", "1", "--write", "on the drop");
        shell.run("private", "probe/first", "--write", "on the station");
        assertThat(shell.run("private", "probe", "--place", "1").out()).isEqualTo("on the drop\n");
        assertThat(shell.run("private", "probe/first").out()).isEqualTo("on the station\n");
        assertThat(shell.run("show", "probe", "--with-private").out()).endsWith("""
            3 private notes: see `show --with-private`
            Private, stays here
              Probe:
                on the canyon
              1 drop:
                on the drop
              first:
                on the station
            """);

        assertThat(shell.run("private", "probe/first", "--write", "").err()).contains("no private note there now");
        assertThat(shell.run("private", "probe/first").code()).isEqualTo(1);
    }

    @Test
    void aPlaceThatIsNotThereIsNamed() {
        assertThat(shell.run("private", "probe", "--place", "2").err())
                .isEqualTo("There is no place 2 on the line of \"Probe\"; it has 1.\n");
        assertThat(shell.run("private", "probe/first", "--place", "1").code()).isEqualTo(2);
    }

    @Test
    void aFileThatBreaksOffIsNamedWithItsLineAndNothingIsTaken() throws IOException {
        enter("--on", "2026-12-05", "--person", "Ana, lead, 62 kg");
        String whole = shell.run("export", "--with-private").out();
        String other = home.resolve("other.db").toString();
        for (int part = 1; part < 8; part++) {
            String text = whole.substring(0, whole.length() * part / 8);
            Path file = Files.writeString(home.resolve("part.json"), text);

            Shell.Ran ran = shell.run("import", file.toString(), "--accept", "--db", other);

            assertThat(ran.code()).isEqualTo(2);
            assertThat(ran.err().lines()).hasSize(1);
            assertThat(ran.err())
                    .contains("part.json ends in the middle, at line "
                            + text.lines().count() + ", column ");
            assertThat(Path.of(other)).doesNotExist();
        }
    }

    @Test
    void twoOfOneNameAreToldApartByRegionAndPlace() throws IOException {
        Path file = Files.writeString(home.resolve("two.json"), """
            {"format": "thalweg records", "version": 2, "canyons": [
              {"name": "Probe", "region": "Elsewhere", "country": "Nowhere", "line": [
                {"kind": "walk"},
                {"kind": "drop", "stations": [{"name": "first"}]}]}]}
            """);
        Shell.Ran taken = shell.run("import", file.toString(), "--accept");
        assertThat(taken.out()).contains("There is another canyon named \"Probe\" here already");

        assertThat(shell.run("show", "probe").err())
                .contains("\"probe\" fits several canyons", "Probe, Nowhere (", "Probe, Elsewhere, Nowhere (");
        assertThat(shell.run("show", "probe/first").err())
                .contains("fits several stations", "Probe/first, place 1, Nowhere (")
                .contains("Probe/first, place 2, Elsewhere, Nowhere (");
    }

    @Test
    void everyCommandHasHelpOnStandardOutput() {
        for (String command : new String[] {"trips", "trip", "given", "private"}) {
            Shell.Ran ran = shell.run(command, "--help");

            assertThat(ran.code()).as(command).isZero();
            assertThat(ran.out()).as(command).startsWith("thalweg " + command).contains("--db");
        }
    }
}
