package thalweg.tui.runtime;

import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;
import java.util.function.Function;
import thalweg.fault.AppException;
import thalweg.fault.Sentence;
import thalweg.tui.core.Effect;
import thalweg.tui.core.Message;
import thalweg.tui.shell.Result;
import thalweg.tui.shell.Work;

/** Does work away from the loop, so that no key waits for it; what comes of it is handed on as a message. */
final class Workers {

    /** So that a long computation does not keep a search waiting. */
    private static final int THREADS = 2;

    private final Map<String, Long> latest = new ConcurrentHashMap<>();
    private final Set<Course> courses = ConcurrentHashMap.newKeySet();
    private final AtomicInteger started = new AtomicInteger();
    private final ExecutorService threads = Executors.newFixedThreadPool(THREADS, this::thread);
    private final EffectRunner runner;
    private final Log log;
    private final Function<Sentence, String> speech;
    private final Consumer<Message> done;

    /**
     * @param speech says what failed in the language in use
     * @param done is given each result, from any thread
     */
    Workers(EffectRunner runner, Log log, Function<Sentence, String> speech, Consumer<Message> done) {
        this.runner = runner;
        this.log = log;
        this.speech = speech;
        this.done = done;
    }

    /** A daemon: work that hangs cannot keep the program from ending. */
    private Thread thread(Runnable task) {
        Thread thread = new Thread(task, "work-" + started.incrementAndGet());
        thread.setDaemon(true);
        return thread;
    }

    /** Does the work as soon as a thread is free, unless only the latest of its kind counts and a later one came meanwhile. */
    void start(Work work) {
        try {
            boolean onlyLatest = work.effect() instanceof Effect.OnlyLatest;
            String asked = asked(work);
            long number = onlyLatest ? latest.merge(asked, 1L, Long::sum) : 0;
            threads.execute(() -> {
                if (!onlyLatest || latest.getOrDefault(asked, number) == number) {
                    done.accept(new Result(work.frame(), outcome(work)));
                }
            });
        } catch (RejectedExecutionException e) {
            log.note("Not begun, because the program was ending: "
                    + work.effect().getClass().getSimpleName());
        }
    }

    /** Who asked for what kind of work; a record would have its hash linked on the way to the first picture, which takes long. */
    private static String asked(Work work) {
        return work.frame() + " " + work.effect().getClass().getName();
    }

    /** Whatever is thrown ends here: a worker's failure must neither end the program nor pass unseen. */
    private Message outcome(Work work) {
        Course course = new Course(
                work.frame(),
                (done, all) ->
                        this.done.accept(new Result(work.frame(), new Message.Progressed(work.effect(), done, all))));
        courses.add(course);
        try {
            return runner.run(work.effect(), course);
        } catch (AppException e) {
            return new Message.Failed(work.effect(), speech.apply(e.saying()));
        } catch (RuntimeException | Error e) {
            String where = log.failure("While doing " + work.effect().getClass().getSimpleName(), e);
            Sentence saying = Sentence.of("This did not work because of a mistake in the program; {0}", where);
            return new Message.Failed(work.effect(), speech.apply(saying));
        } finally {
            courses.remove(course);
        }
    }

    /** Stops what a screen asked for. */
    void stop(long frame) {
        courses.stream().filter(course -> course.isFor(frame)).forEach(Course::stop);
    }

    /**
     * Takes no more work and waits for what was begun or is waiting: a write in flight is not to be cut off.
     *
     * @param milliseconds to wait at most
     * @return whether all of it was done
     */
    boolean finish(long milliseconds) {
        threads.shutdown();
        try {
            return threads.awaitTermination(milliseconds, TimeUnit.MILLISECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return false;
        }
    }
}
