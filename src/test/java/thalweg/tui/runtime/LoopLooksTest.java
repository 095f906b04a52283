package thalweg.tui.runtime;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import thalweg.tui.core.Effect;
import thalweg.tui.core.Key;
import thalweg.tui.core.Message;

/** When the loop looks whether another window changed something, and what it says while work waits for one. */
@Timeout(60)
class LoopLooksTest {

    @TempDir
    private Path folder;

    /** Answers every look in the same way, and counts them. */
    private static final class Watching implements EffectRunner {

        private final AtomicInteger looks = new AtomicInteger();
        private final Message answer;
        private final CountDownLatch seen = new CountDownLatch(1);
        private volatile Runnable waiting = () -> {};

        Watching(Message answer) {
            this.answer = answer;
        }

        @Override
        public boolean watches() {
            return true;
        }

        @Override
        public void onWaiting(Runnable told) {
            waiting = told;
        }

        @Override
        public Message run(Effect effect) {
            if (effect instanceof Effect.Look) {
                looks.incrementAndGet();
                return answer;
            }
            waiting.run();
            untilSeen();
            return new DemoScreen.Rested();
        }

        /** The work goes on once somebody has seen that it waits; else its answer might take that off the screen at once. */
        private void untilSeen() {
            try {
                assertThat(seen.await(20, TimeUnit.SECONDS)).isTrue();
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
        }
    }

    @Test
    void whoComesBackToTheTerminalIsToldWhatChangedMeanwhile() throws Exception {
        Watching runner = new Watching(new Message.ChangedElsewhere());
        try (DemoRun run = new DemoRun(folder.resolve("log"), runner)) {
            run.terminal.await("Opened");
            run.terminal.focus();

            run.terminal.await("The database was changed from elsewhere");
            assertThat(run.quit()).isEqualTo(Loop.DONE);
        }
    }

    @Test
    void keysInAHurryAreNotALookEach() throws Exception {
        Watching runner = new Watching(new Message.Unchanged());
        try (DemoRun run = new DemoRun(folder.resolve("log"), runner)) {
            run.terminal.await("Opened");
            for (int i = 0; i < 500; i++) {
                run.terminal.press(Key.of('x'));
            }
            run.terminal.press(Key.of('z'));
            run.terminal.await("key z");

            assertThat(runner.looks.get()).isLessThan(60);
            run.quit();
        }
    }

    @Test
    void workThatWaitsForAnotherProgramSaysSo() throws Exception {
        Watching runner = new Watching(new Message.Unchanged());
        try (DemoRun run = new DemoRun(folder.resolve("log"), runner)) {
            run.terminal.await("Opened");
            run.terminal.press(Key.of('r'));

            run.terminal.await("Another program is writing to the database");
            runner.seen.countDown();
            run.terminal.await("Rested");
            run.quit();
        }
    }
}
