package thalweg.tui.runtime;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Objects;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import thalweg.tui.core.Key;
import thalweg.tui.core.Message;

/** The loop around a real shell, with a terminal in memory. */
@Timeout(60)
class LoopTest {

    @TempDir
    Path folder;

    private DemoRun opened(EffectRunner runner) throws InterruptedException {
        DemoRun run = new DemoRun(log(), runner);
        run.terminal.await("Opened");
        return run;
    }

    private DemoRun opened() throws InterruptedException {
        return opened(effect -> new DemoScreen.Rested());
    }

    private Path log() {
        return folder.resolve("state").resolve("thalweg.log");
    }

    @Test
    void theFirstPaintHasTheTerminalsSizeAndTheScreenWasOpened() throws Exception {
        try (DemoRun run = opened()) {
            run.terminal.await("Demo 80x24");

            assertThat(run.quit()).isEqualTo(Loop.DONE);
            assertThat(run.terminal.told())
                    .startsWith("size", "repaint")
                    .endsWith("close")
                    .containsOnlyOnce("repaint");
            assertThat(run.printed()).isEmpty();
        }
    }

    @Test
    void keysThatCameTogetherArePaintedTogether() throws Exception {
        try (DemoRun run = opened()) {
            int before = run.terminal.paints();
            Key[] keys = new Key[500];
            for (int i = 0; i < keys.length; i++) {
                keys[i] = Key.of(i < keys.length - 1 ? Key.Named.DOWN : Key.Named.UP);
            }

            run.terminal.press(keys);
            run.terminal.await("key Up");

            assertThat(run.terminal.paints() - before).isLessThan(50);
            run.quit();
        }
    }

    @Test
    void aStormOfSizesIsAskedForOnceAtATime() throws Exception {
        try (DemoRun run = opened()) {
            for (int columns = 60; columns <= 100; columns++) {
                run.terminal.resize(30, columns);
            }
            run.terminal.await("Demo 100x30");
            run.quit();

            // Each of the 41 sizes was told 20 times; while an answer is awaited, only one notice may wait.
            assertThat(run.terminal.told().stream().filter("size"::equals).count())
                    .isLessThan(411);
        }
    }

    @Test
    void ctrlLPaintsEverythingAnew() throws Exception {
        try (DemoRun run = opened()) {
            run.terminal.press(Key.ctrl('l'), Key.of('x'));
            run.terminal.await("key x");
            run.quit();

            assertThat(run.terminal.told()).containsSubsequence("size", "repaint", "size", "repaint", "close");
        }
    }

    @Test
    void afterAPauseTheSizeIsAskedForAndEverythingIsPainted() throws Exception {
        try (DemoRun run = opened()) {
            run.terminal.press(Key.ctrl('z'), Key.of('x'));
            run.terminal.await("key x");
            run.quit();

            assertThat(run.terminal.told())
                    .containsSubsequence("size", "repaint", "suspend", "size", "repaint", "close");
        }
    }

    @Test
    void copyingIsTheTerminalsOwnWork() throws Exception {
        EffectRunner none = effect -> {
            throw new AssertionError("the runner was asked for " + effect);
        };
        try (DemoRun run = opened(none)) {
            run.terminal.press(Key.of('y'));
            run.terminal.await("copied");
            run.quit();

            assertThat(run.terminal.told()).contains("copy sling");
            assertThat(log()).doesNotExist();
        }
    }

    @Test
    void aTextThatCannotBeCopiedIsToldToTheScreen() throws Exception {
        try (DemoRun run = opened()) {
            run.terminal.press(Key.of('Y'));
            run.terminal.await("Too long for this clipboard.");

            assertThat(run.quit()).isEqualTo(Loop.DONE);
        }
    }

    @Test
    void workIsDoneBesideTheLoopAndItsResultArrives() throws Exception {
        CountDownLatch release = new CountDownLatch(1);
        try (DemoRun run = opened(effect -> restedAfter(release))) {
            run.terminal.press(Key.of('r'));
            run.terminal.await("resting");
            run.terminal.press(Key.of('x'));
            run.terminal.await("key x");
            release.countDown();
            run.terminal.await("Rested");

            run.quit();
        }
    }

    private static Message restedAfter(CountDownLatch latch) {
        try {
            assertThat(latch.await(10, TimeUnit.SECONDS)).isTrue();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        return new DemoScreen.Rested();
    }

    @Test
    void whatOnlyReadsBeginsOnceThePictureStands() throws Exception {
        AtomicReference<FakeTerminal> terminal = new AtomicReference<>(new FakeTerminal());
        AtomicReference<String> shownThen = new AtomicReference<>("");
        try (DemoRun run = opened(effect -> {
            if (effect instanceof DemoScreen.Reading) {
                shownThen.set(Objects.requireNonNull(terminal.get()).shown());
            }
            return new DemoScreen.Rested();
        })) {
            terminal.set(run.terminal);

            run.terminal.press(Key.of('l'));
            run.terminal.await("Rested");

            assertThat(shownThen.get()).contains("looking up");
            run.quit();
        }
    }

    @Test
    void aWriteInFlightIsDoneBeforeTheProgramEnds() throws Exception {
        AtomicBoolean written = new AtomicBoolean();
        CountDownLatch begun = new CountDownLatch(1);
        EffectRunner slow = effect -> {
            begun.countDown();
            pause(300);
            written.set(true);
            return new DemoScreen.Rested();
        };
        try (DemoRun run = opened(slow)) {
            run.terminal.press(Key.of('r'));
            assertThat(begun.await(10, TimeUnit.SECONDS)).isTrue();

            assertThat(run.quit()).isEqualTo(Loop.DONE);
            assertThat(written).isTrue();
            assertThat(run.printed()).isEmpty();
        }
    }

    @Test
    void workThatDoesNotEndIsLeftBehindAndThatIsSaid() throws Exception {
        CountDownLatch never = new CountDownLatch(1);
        try (DemoRun run = opened(effect -> restedAfter(never))) {
            run.terminal.press(Key.of('r'));
            run.terminal.await("resting");

            assertThat(run.quit()).isEqualTo(Loop.DONE);
            assertThat(run.printed()).startsWith("Something that was still being done did not come to its end.");
        } finally {
            never.countDown();
        }
    }

    private static void pause(long milliseconds) {
        try {
            Thread.sleep(milliseconds);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
