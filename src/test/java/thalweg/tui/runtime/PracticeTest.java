package thalweg.tui.runtime;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import thalweg.tui.core.Binding;
import thalweg.tui.core.Canvas;
import thalweg.tui.core.Key;
import thalweg.tui.core.Message;
import thalweg.tui.core.Screen;
import thalweg.tui.core.Step;
import thalweg.tui.core.Style;
import thalweg.tui.core.Surroundings;
import thalweg.tui.shell.Resized;
import thalweg.tui.shell.Shell;

class PracticeTest {

    private static final int KEYS_OF_A_ROUND = 6;

    /** Within which a key would have been tried [ms]. */
    private static final long MOMENT = 400;

    private final BlockingQueue<Key> pressed = new LinkedBlockingQueue<>();
    private final Practice practice = new Practice();

    /** Notes what it was asked. */
    private record Noting(BlockingQueue<Key> pressed, boolean waiting, Runnable answering) implements Screen {

        @Override
        public String title(Surroundings around) {
            return "Noting";
        }

        @Override
        public List<Binding> bindings(Surroundings around) {
            return List.of();
        }

        @Override
        public Step update(Message message, Surroundings around) {
            if (message instanceof Message.KeyPressed key) {
                pressed.add(key.key());
            }
            answering.run();
            return Step.stay(this);
        }

        @Override
        public void draw(Canvas canvas, Surroundings around) {
            canvas.put(1, 1, "noting", Style.NORMAL);
        }
    }

    private static Shell shell(Screen screen) {
        return DemoRun.shell(() -> screen).update(new Resized(24, 80)).shell();
    }

    private Noting well() {
        return new Noting(pressed, false, () -> {});
    }

    /** The keys that were tried, up to so many. */
    private List<Key> tried(int most) throws InterruptedException {
        List<Key> keys = new ArrayList<>();
        for (int i = 0; i < most; i++) {
            Key key = pressed.poll(20, TimeUnit.SECONDS);
            if (key == null) {
                break;
            }
            keys.add(key);
        }
        return keys;
    }

    @Test
    void keysThatMayComeAreTriedOnWhatIsShown() throws Exception {
        practice.on(shell(well()));

        List<Key> keys = tried(KEYS_OF_A_ROUND);

        assertThat(keys)
                .hasSize(KEYS_OF_A_ROUND)
                .startsWith(Key.of(Key.Named.DOWN), Key.of(Key.Named.RIGHT), Key.of(Key.Named.PAGE_DOWN));
    }

    @Test
    void aKindOfScreenIsPractisedOnce() throws Exception {
        practice.on(shell(well()));
        assertThat(tried(KEYS_OF_A_ROUND)).hasSize(KEYS_OF_A_ROUND);
        while (pressed.poll(MOMENT, TimeUnit.MILLISECONDS) != null) {
            // What is left of the rounds.
        }

        practice.on(shell(well()));

        assertThat(pressed.poll(MOMENT, TimeUnit.MILLISECONDS)).isNull();
    }

    @Test
    void aScreenThatWaitsForItsContentIsLeftAlone() throws Exception {
        practice.on(shell(new Noting(pressed, true, () -> {})));

        assertThat(pressed.poll(MOMENT, TimeUnit.MILLISECONDS)).isNull();
    }

    @Test
    void aScreenThatBreaksHurtsNobody() throws Exception {
        Noting broken = new Noting(pressed, false, () -> {
            throw new IllegalStateException("broken on purpose");
        });

        practice.on(shell(broken));

        assertThat(tried(KEYS_OF_A_ROUND)).hasSize(KEYS_OF_A_ROUND);
    }

    @Test
    void aScreenThatTakesLongIsLeftAfterItsShare() throws Exception {
        practice.on(shell(new Noting(pressed, false, () -> pause(1000))));
        assertThat(tried(1)).hasSize(1);

        assertThat(pressed.poll(1000 + MOMENT, TimeUnit.MILLISECONDS)).isNull();
        practice.on(shell(well()));
        assertThat(pressed.poll(MOMENT, TimeUnit.MILLISECONDS)).isNull();
    }

    private static void pause(long milliseconds) {
        try {
            Thread.sleep(milliseconds);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    @Test
    void whoeverTypesHasTheProcessor() throws Exception {
        CountDownLatch answered = new CountDownLatch(1);
        practice.on(shell(new Noting(pressed, false, () -> await(answered))));
        assertThat(tried(1)).hasSize(1);

        practice.interrupt();
        answered.countDown();

        assertThat(pressed.poll(MOMENT, TimeUnit.MILLISECONDS)).isNull();
    }

    private static void await(CountDownLatch latch) {
        try {
            assertThat(latch.await(20, TimeUnit.SECONDS)).isTrue();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
