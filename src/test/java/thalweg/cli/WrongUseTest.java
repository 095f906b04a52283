package thalweg.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is said of arguments and files that cannot be used. */
final class WrongUseTest {

    private static final String RECORDS = """
            {"format": "thalweg records", "version": 2, "canyons": [{"name": "Probe", "line": [{"kind": "drop"}]}]}
            """;

    @TempDir
    private Path home = Path.of("");

    private Shell shell = new Shell(Path.of(""));

    private Path file = Path.of("");

    @BeforeEach
    void takeIn() throws IOException {
        shell = new Shell(home);
        file = Files.writeString(home.resolve("records.json"), RECORDS);
        Shell.Ran ran = shell.run("import", file.toString(), "--accept");
        assertThat(ran.code()).isZero();
        assertThat(ran.out()).contains("2 new things, 0 new entries");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            foo                          | There is no command "foo". See thalweg --help.
            list --nope                  | There is no option --nope here. See thalweg list --help.
            show probe else              | "else" is one word too many; put what belongs together in quotes.
            private probe --place abc    | --place is a whole number, not "abc".
            sheet probe --as svg         | --as is one of html, text, markdown, pdf, not "svg".
            list --units foo             | --units is one of metric, imperial, not "foo".
            remove probe                 | --reason TEXT is needed here.
            list --db                    | --db needs FILE after it.
            inspect probe left           | CONDITION is missing.
            round probe --on 1 --on 2    | --on is given twice; say it once.
            """)
    void wrongArgumentsAreSaidInOurWords(String line, String sentence) {
        Shell.Ran ran = shell.run(line.split(" "));

        assertThat(ran.code()).isEqualTo(ExitCodes.WRONG_INPUT);
        assertThat(ran.err().lines()).hasSize(1);
        assertThat(ran.err()).startsWith(sentence);
    }

    @Test
    void aFileThatIsThereIsReplacedByAnOption() {
        assertThat(shell.run("export", "--out", file.toString()).err())
                .isEqualTo(file + " is there already; name another file, or add --overwrite.\n");
    }

    @Test
    void aDeviceIsNeverReplaced() {
        Shell.Ran ran = shell.run("export", "--out", "/dev/full", "--overwrite");

        assertThat(ran.code()).isEqualTo(ExitCodes.WRONG_INPUT);
        assertThat(ran.err()).startsWith("/dev/full is no file that can be replaced");
        assertThat(Path.of("/dev/full"))
                .satisfies(full -> assertThat(Files.isRegularFile(full)).isFalse());
    }

    @Test
    void whatWasTakenInBeforeIsNotTakenInAgain() {
        Shell.Ran again = shell.run(
                "import",
                shell.run("export", "--out", home.resolve("e.json").toString())
                        .err()
                        .replace("Written: ", "")
                        .strip(),
                "--accept");

        assertThat(again.out()).startsWith("Nothing new in 1 canyon: 0 new things");
        assertThat(again.err()).isEqualTo("There is nothing to take in.\n");
    }

    @Test
    void halfAFileEndsInTheMiddle() throws IOException {
        for (int length : new int[] {10, 40, RECORDS.length() - 4}) {
            Path half = Files.writeString(home.resolve("half.json"), RECORDS.substring(0, length));

            assertThat(shell.run("import", half.toString()).err())
                    .as("%s characters", length)
                    .contains("ends in the middle, at line");
        }
    }

    @Test
    void noReasonIsToldAlikeOfThingsAndEntries() {
        assertThat(shell.run("remove", "probe", "--reason", " ").err())
                .isEqualTo("A word of reason is needed; it is kept with what was changed.\n");
    }

    @Test
    void aFolderOrATextIsNoBackup() throws IOException {
        Path text = Files.writeString(home.resolve("letter.txt"), "Dear Ana");

        assertThat(shell.run("restore", home.toString()).err())
                .isEqualTo(home + " is a folder; name one of the backups in it.\n");
        assertThat(shell.run("restore", text.toString()).err())
                .isEqualTo(text + " is not a Thalweg database; name another file.\n");
    }

    @Test
    void whereADatabaseCannotBeSeenIsNotWhereThereIsNone() throws IOException {
        Path text = Files.writeString(home.resolve("letter.txt"), "Dear Ana");

        Shell.Ran ran = shell.run("list", "--db", text.resolve("x.db").toString());

        assertThat(ran.code()).isEqualTo(ExitCodes.UNUSABLE_DATABASE);
        assertThat(ran.err()).contains("cannot be seen", "may be entered");
    }

    @Test
    void anAlteredLedgerIsNamedByItsFileAndAnAlteredBackupIsNotMendedByABackup() throws SQLException, IOException {
        Path copy = home.resolve("copy.db");
        assertThat(shell.run("backup", "--out", copy.toString()).code()).isZero();
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + copy);
                Statement statement = connection.createStatement()) {
            statement.execute(Files.readString(Path.of("src/test/resources/thalweg/storage/altered.sql")));
        }

        assertThat(shell.run("check", "--db", copy.toString()).out())
                .startsWith("The database " + copy + " is not as it should be:\n")
                .contains("Put a backup copy in its place.");
        assertThat(shell.run("restore", copy.toString()).out())
                .contains("Use another backup.")
                .doesNotContain("in its place");
    }
}
