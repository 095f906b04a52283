package thalweg.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BackupAndRestoreTest {

    private static final String PROBE = """
            {"format": "thalweg records", "version": 2, "canyons": [{"name": "NAME", "line": [{"kind": "drop"}]}]}
            """;

    @TempDir
    private Path home;

    private Shell shell;

    @BeforeEach
    void oneCanyonIsThere() throws IOException {
        shell = new Shell(home);
        add("First");
    }

    private void add(String name) throws IOException {
        Path file = home.resolve(name + ".json");
        Files.writeString(file, PROBE.replace("NAME", name));
        assertThat(shell.run("import", file.toString(), "--accept").code()).isZero();
    }

    private Path backup() {
        Shell.Ran ran = shell.run("backup");
        assertThat(ran.code()).isZero();
        return Path.of(ran.out().strip());
    }

    private String list() {
        return shell.run("list").out();
    }

    private List<Path> beside(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.toList();
        }
    }

    private static void alter(Path file, String sql) throws SQLException {
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
                Statement statement = connection.createStatement()) {
            statement.execute(sql);
        }
    }

    @Test
    void aBackupIsACopyThatOnlyItsOwnerReads() throws IOException {
        Path backup = backup();

        assertThat(backup).isEqualTo(shell.folders().data().resolve("backups").resolve(backup.getFileName()));
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(backup)))
                .isEqualTo("rw-------");
        assertThat(shell.run("list", "--db", backup.toString()).out()).contains("First");
        assertThat(shell.run("check", "--db", backup.toString()).code()).isZero();
    }

    @Test
    void aBackupIsNeverWrittenOverAFile() throws IOException {
        Path there = Files.writeString(home.resolve("there.db"), "precious");

        Shell.Ran ran = shell.run("backup", "--out", there.toString());

        assertThat(ran.code()).isEqualTo(ExitCodes.UNUSABLE_DATABASE);
        assertThat(ran.err()).contains("is there already; move it away");
        assertThat(there).hasContent("precious");
    }

    @Test
    void aRestoreBringsBackWhatWasThereAndKeepsWhatCameAfter() throws IOException {
        Path backup = backup();
        byte[] bytes = Files.readAllBytes(backup);
        add("Second");

        Shell.Ran look = shell.run("restore", backup.toString());
        assertThat(look.code()).isZero();
        assertThat(look.out()).contains("The backup is sound and holds 1 canyon.");
        assertThat(list()).contains("Second");

        Shell.Ran done = shell.run("restore", backup.toString(), "--accept");
        assertThat(done.code()).isZero();
        assertThat(list()).contains("First").doesNotContain("Second");
        assertThat(Files.readAllBytes(backup)).isEqualTo(bytes);
        Path kept = Path.of(
                done.out().replace("What was there before is kept in ", "").strip());
        assertThat(shell.run("list", "--db", kept.toString()).out()).contains("First", "Second");
        assertThat(beside(shell.folders().data()))
                .noneMatch(file -> file.toString().contains("restoring"));
        assertThat(shell.run("check").code()).isZero();
    }

    @Test
    void aRestoreMakesTheDatabaseWhereThereIsNone() {
        Path backup = backup();
        Path fresh = home.resolve("fresh.db");

        Shell.Ran done = shell.run("restore", backup.toString(), "--accept", "--db", fresh.toString());

        assertThat(done.code()).isZero();
        assertThat(done.out()).isEmpty();
        assertThat(shell.run("list", "--db", fresh.toString()).out()).contains("First");
    }

    @Test
    void aDamagedBackupChangesNothing() throws IOException {
        Path backup = backup();
        add("Second");
        byte[] bytes = Files.readAllBytes(backup);
        for (int i = 5000; i < bytes.length; i += 7) {
            bytes[i] ^= 0x55;
        }
        Path damaged = Files.write(home.resolve("damaged.db"), bytes);

        Shell.Ran done = shell.run("restore", damaged.toString(), "--accept");

        assertThat(done.code()).isEqualTo(ExitCodes.UNUSABLE_DATABASE);
        assertThat(done.err()).contains("damaged").doesNotContain("restoring");
        assertThat(list()).contains("First", "Second");
        assertThat(beside(shell.folders().data()))
                .noneMatch(file -> file.toString().contains("restoring"));
    }

    @Test
    void whatSomebodyPutIntoABackupKeepsItOut() throws SQLException, IOException {
        Path backup = backup();
        alter(backup, Files.readString(Path.of("src/test/resources/thalweg/storage/sly.sql")));

        Shell.Ran look = shell.run("restore", backup.toString());
        assertThat(look.code()).isEqualTo(ExitCodes.NO);
        assertThat(look.out()).contains("The trigger sly is not of this program; somebody put it there.");

        Shell.Ran done = shell.run("restore", backup.toString(), "--accept");
        assertThat(done.code()).isEqualTo(ExitCodes.UNUSABLE_DATABASE);
        assertThat(done.err()).contains("is not sound, and nothing was changed");
    }

    @Test
    void aDatabaseThatCannotBeOpenedIsNotMovedAwayUnasked() throws IOException {
        Path backup = backup();
        Path other = Files.writeString(home.resolve("letter.txt"), "Dear Ana");

        Shell.Ran done = shell.run("restore", backup.toString(), "--accept", "--db", other.toString());

        assertThat(done.code()).isEqualTo(ExitCodes.UNUSABLE_DATABASE);
        assertThat(done.err()).contains("is not a Thalweg database", "first move that file away by hand");
        assertThat(other).hasContent("Dear Ana");
    }

    @Test
    void whatIsNoBackupIsSaid() throws IOException {
        Path text = Files.writeString(home.resolve("letter.txt"), "Dear Ana");

        assertThat(shell.run("restore", home.resolve("none.db").toString()).err())
                .contains("There is no backup");
        assertThat(shell.run("restore", text.toString()).err()).contains("is not a Thalweg database");
        assertThat(shell.run("restore", shell.folders().database().toString()).err())
                .contains("is the database itself");
    }

    @Test
    void checkTellsWhatInTheRecordsCannotBeTrue() throws IOException {
        Path file = home.resolve("odd.json");
        Files.writeString(
                file,
                PROBE.replace("NAME", "Odd")
                        .replace("\"line\"", "\"longest_drop_cm\": 500, \"line\"")
                        .replace("\"drop\"", "\"drop\", \"height_cm\": 900"));
        assertThat(shell.run("import", file.toString(), "--accept").code()).isZero();

        Shell.Ran ran = shell.run("check");

        assertThat(ran.code()).isEqualTo(ExitCodes.NO);
        assertThat(ran.out())
                .contains(
                        "The file is whole", "Odd / place 1: is 9 m high, but the longest drop of the canyon is said");
    }
}
