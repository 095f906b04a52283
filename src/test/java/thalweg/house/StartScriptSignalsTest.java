package thalweg.house;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import thalweg.house.Checkout.Outcome;

/** What the start script does around the program: signals, the terminal, the archive of classes. */
class StartScriptSignalsTest {

    private static final String LEAVE_OTHER_SCREEN = "\033[?1049l";

    /** Java cannot take an archive from a folder with such a name, so that none is made behind the test's back. */
    private static final String WITHOUT_ARCHIVE = "/no:archive";

    @TempDir
    Path folder;

    private Checkout checkout;

    @BeforeEach
    void makeBuiltCheckout() throws IOException, InterruptedException {
        checkout = new Checkout(folder).withJava("17.0.1", "").withMaven("");
        checkout.start("list");
    }

    @Test
    void aRequestToEndReachesTheProgramWhichEndsAsItLikes() throws Exception {
        Path ready = folder.resolve("ready");
        checkout.withJava("17.0.1", "trap 'exit 7' TERM\n: >'" + ready + "'\nwhile :; do sleep 0.05; done");

        Process process = checkout.begin(folder, checkout.command("thalweg", "list"));
        Checkout.await(ready);
        process.destroy();

        assertThat(checkout.ended(process).code()).isEqualTo(7);
    }

    @Test
    void anInterruptReachesTheProgramAndIsReportedAsOne() throws Exception {
        Path ready = folder.resolve("ready");
        checkout.withJava(
                "17.0.1", "trap 'echo closed; exit 143' TERM\n: >'" + ready + "'\nwhile :; do sleep 0.05; done");
        // Whoever runs these tests may have switched interrupts off for everything below.
        List<String> command = List.of(
                "/usr/bin/env",
                "--default-signal=INT",
                checkout.script("thalweg").toString(),
                "list");

        Process process = checkout.begin(folder, command);
        Checkout.await(ready);
        new ProcessBuilder("kill", "-INT", Long.toString(process.pid())).start().waitFor();

        Outcome outcome = checkout.ended(process);
        assertThat(outcome.out()).isEqualTo("closed\n");
        assertThat(outcome.code()).isEqualTo(130);
    }

    @Test
    void aKilledScreenLeavesTheTerminalAsItWas() throws Exception {
        checkout.with("XDG_CACHE_HOME", WITHOUT_ARCHIVE);
        checkout.withJava("17.0.1", "stty raw -echo </dev/tty; kill -9 $$");

        Outcome outcome = onTerminal("stty -g; '" + checkout.script("thalweg") + "'; echo code $?; stty -g");

        List<String> lines = outcome.out().lines().toList();
        assertThat(outcome.out()).contains(LEAVE_OTHER_SCREEN, "ended by signal 9", "code 137");
        assertThat(lines.get(lines.size() - 1)).isEqualTo(lines.get(0)).matches("[0-9a-f:]+");
    }

    @Test
    void aScreenThatEndsByItselfIsLeftAlone() throws Exception {
        checkout.with("XDG_CACHE_HOME", WITHOUT_ARCHIVE);

        Outcome outcome = onTerminal("'" + checkout.script("thalweg") + "'");

        assertThat(outcome.out()).isEmpty();
        assertThat(outcome.code()).isZero();
    }

    @Test
    void theFirstScreenMakesAnArchiveThatTheNextStartUses() throws Exception {
        assertThat(checkout.javaArguments()).noneMatch(option -> option.startsWith("-XX:SharedArchiveFile="));

        onTerminal("'" + checkout.script("thalweg")
                + "' --db 'my file'; while ! [ -e \"$HOME\"/.cache/thalweg/*.jsa ]; do sleep 0.1; done");
        checkout.start("list");

        Path archive = archive();
        assertThat(checkout.javaArguments()).contains("-XX:SharedArchiveFile=" + archive);
        assertThat(Files.readAllLines(archive))
                .endsWith("-jar", checkout.target("thalweg-1.jar").toString(), "--warm-up")
                .contains("-XX:TieredStopAtLevel=1");
    }

    @Test
    void anArchiveOlderThanTheJarIsNotUsed() throws Exception {
        makeArchive();
        Checkout.age(archive());

        checkout.start("list");

        assertThat(checkout.javaArguments()).noneMatch(option -> option.startsWith("-XX:SharedArchiveFile="));
    }

    @Test
    void anArchiveThatCrashesJavaIsThrownAway() throws Exception {
        makeArchive();
        checkout.withJava("17.0.1", "kill -BUS $$").start("list");

        assertThat(archives()).isEmpty();
    }

    /** Makes the archive that the next start will use, as the first screen does. */
    private void makeArchive() throws IOException, InterruptedException {
        onTerminal("'" + checkout.script("thalweg")
                + "'; while ! [ -e \"$HOME\"/.cache/thalweg/*.jsa ]; do sleep 0.1; done");
        checkout.start("list");
        assertThat(checkout.javaArguments()).contains("-XX:SharedArchiveFile=" + archive());
    }

    private Path archive() throws IOException {
        return archives().get(0);
    }

    private List<Path> archives() throws IOException {
        try (Stream<Path> files = Files.list(folder.resolve(".cache/thalweg"))) {
            return files.filter(file -> file.toString().endsWith(".jsa")).toList();
        }
    }

    private Outcome onTerminal(String commands) throws IOException, InterruptedException {
        return checkout.run(folder, List.of("script", "-qec", commands, "/dev/null"));
    }
}
