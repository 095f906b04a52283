package thalweg.tui.runtime;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import thalweg.ledger.Uid;
import thalweg.service.DraftFolder;
import thalweg.service.LoadPhrases;
import thalweg.settings.Settings;
import thalweg.testing.KeptDrafts;
import thalweg.tui.core.Glyphs;
import thalweg.tui.core.Key;
import thalweg.tui.core.Surroundings;
import thalweg.tui.screen.Go;
import thalweg.tui.screen.Screens;
import thalweg.tui.screen.Told;
import thalweg.tui.shell.Shell;
import thalweg.units.UnitSystem;

/** What the loop keeps of what is typed, with the folder as it is in the program. */
@Timeout(60)
class LoopDraftsTest {

    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-06-01T10:00:00Z"), ZoneOffset.UTC);

    private final FakeTerminal terminal = new FakeTerminal();

    @TempDir
    private Path folder;

    private CompletableFuture<Integer> run(EffectRunner runner) {
        Surroundings around = new Surroundings(
                LoadPhrases.english(),
                UnitSystem.METRIC,
                LocalDate.of(2026, 6, 1),
                Glyphs.BRAILLE,
                false,
                "demo",
                Settings.standard(LoadPhrases.english()),
                1,
                1);
        Shell shell = Shell.of(Screens::of, new Go.EditCanyon(new Uid(new UUID(1, 1)), Optional.empty()), around);
        Log log = new Log(folder.resolve("thalweg.log"), CLOCK);
        RunKeep keep = new RunKeep(
                Optional.of(DraftFolder.of(folder.resolve("drafts"), folder.resolve("a.db"), CLOCK, log::note)));
        Loop loop = new Loop(terminal, runner, keep, log);
        return CompletableFuture.supplyAsync(() -> loop.run(shell), task -> new Thread(task).start());
    }

    private void type(String text) {
        text.codePoints().forEach(c -> terminal.press(Key.of(c)));
    }

    private String kept() throws IOException {
        return KeptDrafts.in(folder.resolve("drafts"));
    }

    @Test
    void whatIsTypedIsOnTheDiskWithinASecondOfTheLastKey() throws Exception {
        CompletableFuture<Integer> code = run(effect -> new Told.Saved(List.of()));
        terminal.await("New canyon");
        type("Rio");
        terminal.await("Rio");
        long typed = System.nanoTime();

        while (!kept().contains("\"Rio\"")) {
            // The keeper is 0.4 s behind; the rest is for a machine with much else to do.
            assertThat(System.nanoTime() - typed).isLessThan(TimeUnit.SECONDS.toNanos(20));
            Thread.onSpinWait();
        }
        terminal.press(Key.ctrl('c'));
        assertThat(code.get(20, TimeUnit.SECONDS)).isEqualTo(Loop.DONE);
    }

    @Test
    void anEndRightAfterTheLastKeyLosesNothing() throws Exception {
        CompletableFuture<Integer> code = run(effect -> new Told.Saved(List.of()));
        terminal.await("New canyon");
        type("Rio");
        terminal.press(Key.of('!'), Key.ctrl('c'));

        assertThat(code.get(20, TimeUnit.SECONDS)).isEqualTo(Loop.DONE);
        assertThat(kept()).contains("\"Rio!\"");
    }

    @Test
    void aTerminalThatGoesAwayLosesNothing() throws Exception {
        CompletableFuture<Integer> code = run(effect -> new Told.Saved(List.of()));
        terminal.await("New canyon");
        type("Rio");
        terminal.await("Rio");
        terminal.hangUp();

        assertThat(code.get(20, TimeUnit.SECONDS)).isEqualTo(Loop.TERMINAL_LOST);
        assertThat(kept()).contains("\"Rio\"");
    }

    @Test
    void whatIsSavedWhileTheProgramEndsDoesNotComeBack() throws Exception {
        CountDownLatch saving = new CountDownLatch(1);
        CountDownLatch save = new CountDownLatch(1);
        CompletableFuture<Integer> code = run(effect -> {
            saving.countDown();
            try {
                save.await(20, TimeUnit.SECONDS);
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
            return new Told.Saved(List.of());
        });
        terminal.await("New canyon");
        type("Rio");
        terminal.press(Key.ctrl('s'));
        assertThat(saving.await(20, TimeUnit.SECONDS)).isTrue();
        terminal.press(Key.ctrl('c'));
        save.countDown();

        assertThat(code.get(20, TimeUnit.SECONDS)).isEqualTo(Loop.DONE);
        assertThat(kept()).isEmpty();
    }

    @Test
    void aFolderThatCannotBeWrittenIsSaidOnceAndKeysGoOn() throws Exception {
        Files.writeString(folder.resolve("drafts"), "a file where the folder should be");
        CompletableFuture<Integer> code = run(effect -> new Told.Saved(List.of()));
        terminal.await("New canyon");
        type("Rio");
        terminal.await("cannot be made");
        type("!");

        terminal.await("Rio!");
        terminal.press(Key.ctrl('c'));
        assertThat(code.get(20, TimeUnit.SECONDS)).isEqualTo(Loop.DONE);
    }
}
