package thalweg.tui.runtime;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import thalweg.fault.Sentence;
import thalweg.tui.core.Key;

/** What the loop does when something goes wrong. */
@Timeout(60)
class LoopFailuresTest {

    private static final EffectRunner RESTING = effect -> new DemoScreen.Rested();

    @TempDir
    Path folder;

    private Path log() {
        return folder.resolve("state").resolve("thalweg.log");
    }

    @Test
    void anAnswerOfWorkIsShownAsItStands() throws Exception {
        EffectRunner refusing = effect -> {
            throw new TerminalException(Sentence.of("The rope is too short."));
        };
        try (DemoRun run = new DemoRun(log(), refusing, Key.of('r'))) {
            run.terminal.await("The rope is too short.");

            assertThat(run.quit()).isEqualTo(Loop.DONE);
            assertThat(log()).doesNotExist();
        }
    }

    @Test
    void aMistakeInWorkIsLoggedAndTheProgramGoesOn() throws Exception {
        EffectRunner falling = effect -> {
            throw new StackOverflowError("fell on purpose");
        };
        try (DemoRun run = new DemoRun(log(), falling, Key.of('f'))) {
            run.terminal.await("This did not work because of a mistake");
            run.terminal.press(Key.of('x'));
            run.terminal.await("key x");

            assertThat(run.quit()).isEqualTo(Loop.DONE);
            assertThat(log())
                    .content()
                    .startsWith("2026-06-01T10:00:00Z While doing Fall: java.lang.StackOverflowError: fell on purpose");
        }
    }

    @ParameterizedTest
    @CsvSource({"e, broken on purpose", "d, drawing broke on purpose"})
    void aMistakeInAScreenIsLoggedAndTheProgramGoesOn(char key, String reason) throws Exception {
        try (DemoRun run = new DemoRun(log(), RESTING, Key.of(key))) {
            run.terminal.await("This screen was closed because of a mistake in the program");
            run.terminal.press(Key.of('x'));
            run.terminal.await("key x");

            assertThat(run.quit()).isEqualTo(Loop.DONE);
            assertThat(log()).content().contains("In a screen: java.lang.IllegalStateException", reason);
        }
    }

    @Test
    void aMistakeThatComesAgainAtOnceGivesTheTerminalBackAndSaysWhereToLook() throws Exception {
        try (DemoRun run = new DemoRun(log(), RESTING, () -> new DemoScreen("break while drawing always"))) {
            assertThat(run.code()).isEqualTo(Loop.MISTAKE);

            assertThat(run.terminal.told()).endsWith("close");
            assertThat(run.printed().strip())
                    .isEqualTo(
                            "Thalweg ended because of a mistake in the program; the log at " + log() + " says more.");
            assertThat(log()).content().contains("drawing broke on purpose");
        }
    }

    @Test
    void aLogThatCannotBeWrittenIsNotPromised() throws Exception {
        Path file = Files.writeString(folder.resolve("state"), "a file where the folder should be");

        try (DemoRun run = new DemoRun(log(), RESTING, Key.of('e'))) {
            run.terminal.await("could not be written.");
            run.quit();

            assertThat(file).content().isEqualTo("a file where the folder should be");
        }
    }

    @Test
    void aTerminalThatGoesAwayEndsTheProgram() throws Exception {
        try (DemoRun run = new DemoRun(log(), RESTING)) {
            run.terminal.await("Opened");

            run.terminal.hangUp();

            assertThat(run.code()).isEqualTo(Loop.TERMINAL_LOST);
            assertThat(run.terminal.told()).endsWith("close");
        }
    }

    @Test
    void aTerminalThatTakesNothingMoreEndsTheProgram() throws Exception {
        try (DemoRun run = new DemoRun(log(), RESTING)) {
            run.terminal.await("Opened");

            run.terminal.breakOutput();
            run.terminal.press(Key.of('x'));

            assertThat(run.code()).isEqualTo(Loop.TERMINAL_LOST);
            assertThat(run.printed().strip()).isEqualTo("The terminal is broken.");
        }
    }

    @Test
    void aReadingThatBreaksEndsTheProgram() throws Exception {
        try (DemoRun run = new DemoRun(log(), RESTING)) {
            run.terminal.await("Opened");

            run.terminal.breakInput();

            assertThat(run.code()).isEqualTo(Loop.MISTAKE);
            assertThat(log()).content().contains("reading broke on purpose");
        }
    }

    @Test
    void whatIsPrintedWhileTheScreenIsUpGoesIntoTheLogForItsOwnerAlone() throws Exception {
        EffectRunner printing = effect -> {
            System.err.println("a library complains");
            System.out.println("another one boasts");
            return new DemoScreen.Rested();
        };
        try (DemoRun run = new DemoRun(log(), printing, Key.of('r'))) {
            run.terminal.await("Rested");
            run.quit();

            assertThat(run.printed()).isEmpty();
            assertThat(log()).content().contains("a library complains", "another one boasts");
            assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(log())))
                    .isEqualTo("rw-------");
            assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(log().getParent())))
                    .isEqualTo("rwx------");
        }
    }

    @Test
    void aLogThatHasGrownLongIsKeptAsideOnce() throws Exception {
        Files.createDirectories(log().getParent());
        Files.writeString(log(), "old ".repeat((int) Log.LONGEST / 4 + 1));
        try (DemoRun run = new DemoRun(log(), RESTING, Key.of('e'))) {
            run.terminal.await("This screen was closed");
            run.quit();

            assertThat(log()).content().doesNotContain("old old").contains("broken on purpose");
            assertThat(log().resolveSibling("thalweg.log.old")).content().startsWith("old old");
        }
    }
}
