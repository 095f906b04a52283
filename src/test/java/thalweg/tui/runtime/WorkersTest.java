package thalweg.tui.runtime;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.CountDownLatch;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import thalweg.fault.Sentence;
import thalweg.tui.core.Effect;
import thalweg.tui.core.Message;
import thalweg.tui.shell.Work;

class WorkersTest {

    @TempDir
    private Path folder = Path.of("");

    private record Search(String words) implements Effect.OnlyLatest {}

    private record Save(String what) implements Effect {}

    private final List<Effect> begun = new CopyOnWriteArrayList<>();
    private final List<Message> told = new CopyOnWriteArrayList<>();

    /** Work that is called "hold" keeps its thread until it is let go; there are two threads. */
    private Workers workers(CountDownLatch held, CountDownLatch letGo) {
        EffectRunner runner = effect -> {
            begun.add(effect);
            if (effect.equals(new Save("hold"))) {
                held.countDown();
                awaited(letGo);
            }
            return new Message.Unchanged();
        };
        return new Workers(runner, new Log(folder.resolve("log"), Clock.systemUTC()), Sentence::toString, told::add);
    }

    private static void awaited(CountDownLatch latch) {
        try {
            latch.await();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    @Test
    void ofSearchesThatWaitOnlyTheLastOfEachScreenIsDone() throws Exception {
        CountDownLatch held = new CountDownLatch(2);
        CountDownLatch letGo = new CountDownLatch(1);
        Workers workers = workers(held, letGo);
        workers.start(new Work(1, new Save("hold")));
        workers.start(new Work(1, new Save("hold")));
        held.await();

        workers.start(new Work(1, new Search("p")));
        workers.start(new Work(1, new Save("entry")));
        workers.start(new Work(2, new Search("other screen")));
        workers.start(new Work(1, new Search("po")));
        workers.start(new Work(1, new Save("entry")));
        workers.start(new Work(1, new Search("por")));
        letGo.countDown();

        assertThat(workers.finish(10_000)).isTrue();
        assertThat(begun)
                .containsExactlyInAnyOrder(
                        new Save("hold"),
                        new Save("hold"),
                        new Save("entry"),
                        new Search("other screen"),
                        new Save("entry"),
                        new Search("por"));
        assertThat(told).hasSize(6);
    }
}
