package thalweg.tui.runtime;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Executors;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.ScheduledFuture;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Consumer;
import java.util.function.Function;
import thalweg.fault.AppException;
import thalweg.fault.Sentence;
import thalweg.tui.core.Effect;
import thalweg.tui.core.Message;
import thalweg.tui.screen.Keep;
import thalweg.tui.screen.Told;
import thalweg.tui.shell.Result;
import thalweg.tui.shell.Shell;

/**
 * Keeps what is typed, a moment behind the keys and never in their way. One thread does all of it in turn, so that a draft
 * is found that was written just before, and one that was dropped is not written again.
 */
final class DraftKeeper {

    /** What a failure to write is told of, which nobody asked for. */
    private static final Effect WRITING = new Keep.ListAll();

    /** How far what is kept may be behind what is typed [ms]. */
    private static final long BEHIND = 400;

    private final ScheduledExecutorService thread = Executors.newSingleThreadScheduledExecutor(DraftKeeper::thread);
    private final AtomicBoolean due = new AtomicBoolean();
    private final AtomicBoolean ending = new AtomicBoolean();
    private final RunKeep runner;
    private final Log log;
    private final Function<Sentence, String> speech;
    private final Consumer<Message> done;
    private volatile Optional<Shell> latest = Optional.empty();
    private volatile Optional<ScheduledFuture<?>> waiting = Optional.empty();
    private boolean failing;

    /**
     * @param speech says what failed in the language in use
     * @param done is given each answer, from the keeper's thread
     */
    DraftKeeper(RunKeep runner, Log log, Function<Sentence, String> speech, Consumer<Message> done) {
        this.runner = runner;
        this.log = log;
        this.speech = speech;
        this.done = done;
    }

    private static Thread thread(Runnable task) {
        Thread thread = new Thread(task, "drafts");
        thread.setDaemon(true);
        return thread;
    }

    /** The interface is in that state now. Once the program is ending, what is there is kept without being asked for. */
    void after(Shell shell) {
        latest = Optional.of(shell);
        if (!ending.get() && due.compareAndSet(false, true)) {
            try {
                waiting = Optional.of(thread.schedule(this::flush, BEHIND, TimeUnit.MILLISECONDS));
            } catch (RejectedExecutionException endingNow) {
                // The end came between the question and the task, and keeps the latest by itself.
                return;
            }
        }
    }

    /** Does what a screen asks, after what was asked before. */
    void start(long frame, Keep keep) {
        try {
            thread.execute(() -> outcome(keep).ifPresent(told -> done.accept(new Result(frame, told))));
        } catch (RejectedExecutionException e) {
            log.note("A draft was not looked after, because the program was ending.");
        }
    }

    private void flush() {
        due.set(false);
        try {
            latest.ifPresent(shell -> runner.flush(shell.drafts()));
            failing = false;
        } catch (AppException e) {
            // Said once: it would come again with every key.
            if (!failing) {
                log.failure("While keeping a draft", e);
                done.accept(new Result(Shell.NOBODY, new Message.Failed(WRITING, speech.apply(e.saying()))));
            }
            failing = true;
        } catch (RuntimeException | Error e) {
            log.failure("While keeping a draft", e);
        }
    }

    /** A draft that cannot be found counts as none: a form that waits for it must open. */
    private Optional<Message> outcome(Keep keep) {
        try {
            return runner.run(keep);
        } catch (AppException e) {
            log.failure("While looking after drafts", e);
            return Optional.of(new Message.Failed(keep, speech.apply(e.saying())));
        } catch (RuntimeException | Error e) {
            log.failure("While looking after drafts", e);
            return keep instanceof Keep.Find
                    ? Optional.of(new Told.DraftFound(Optional.empty()))
                    : Optional.of(new Told.DraftsListed(List.of()));
        }
    }

    /** Waits for what was asked before: a form that was just opened keeps nothing until it knows whether it has a draft. */
    void settle(long milliseconds) {
        try {
            thread.submit(() -> {}).get(milliseconds, TimeUnit.MILLISECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        } catch (RejectedExecutionException | ExecutionException | TimeoutException nothingMoreToWaitFor) {
            return;
        }
    }

    /** Keeps what is there, and takes no more. A signal and the end of the loop that it brings may both call it. */
    void finish(long milliseconds) {
        if (ending.compareAndSet(false, true)) {
            // Else the end would wait for it, though nothing is left to do by then.
            waiting.ifPresent(later -> later.cancel(false));
            thread.execute(this::flush);
            thread.shutdown();
        }
        try {
            thread.awaitTermination(milliseconds, TimeUnit.MILLISECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
