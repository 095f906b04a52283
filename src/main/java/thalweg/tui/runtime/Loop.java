package thalweg.tui.runtime;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Function;
import java.util.function.Supplier;
import thalweg.fault.AppException;
import thalweg.fault.Sentence;
import thalweg.tui.core.Canvas;
import thalweg.tui.core.Effect;
import thalweg.tui.core.Message;
import thalweg.tui.screen.Keep;
import thalweg.tui.shell.Reaction;
import thalweg.tui.shell.Resized;
import thalweg.tui.shell.Result;
import thalweg.tui.shell.ScreenFailure;
import thalweg.tui.shell.Shell;
import thalweg.tui.shell.Work;

/**
 * Runs the interface in a terminal until it is told to end.
 *
 * <p>Everything that happens goes through one queue: keys from a reading thread, results from workers, another size of
 * the terminal. All that is waiting is handled before the next paint, so that a paste, a held key or a storm of sizes
 * costs one paint and not hundreds.
 */
public final class Loop {

    /** The person ended it. */
    public static final int DONE = 0;

    /** A mistake in the program ended it. Source: EX_SOFTWARE of BSD's sysexits.h. */
    public static final int MISTAKE = 70;

    /** The terminal went away. Source: EX_IOERR of BSD's sysexits.h. */
    public static final int TERMINAL_LOST = 74;

    /** From one look whether another window changed something to the next [ms]. */
    private static final long BETWEEN_LOOKS = 1000;

    /** Screens that fail one after the other without a picture in between; after more the program ends. */
    private static final int MOST_FAILURES = 3;

    /** Time for work in flight when the program ends [ms]. */
    private static final long PATIENCE = 2000;

    /** Time for answers that have come when a signal ends the program [ms]. */
    private static final long SETTLING = 300;

    /** All that came before was handled. */
    private record Settled(CountDownLatch latch) implements Message {}

    /** The terminal may have another size. */
    private record SizeInDoubt() implements Message {}

    /** Nothing more will be read. */
    private record InputEnded() implements Message {}

    /** Reading met a mistake of the program. */
    private record ReadingBroke(Throwable cause) implements Message {}

    private final TerminalPort terminal;
    private final Log log;
    private final Function<Sentence, String> speech;
    private final Workers workers;
    private final DraftKeeper drafts;
    private final Practice practice = new Practice();
    private final List<Work> postponed = new ArrayList<>();
    private final BlockingQueue<Message> queue = new LinkedBlockingQueue<>();
    private final AtomicBoolean sizeInDoubt = new AtomicBoolean();

    private Optional<Shell> last = Optional.empty();
    private volatile boolean looping = true;
    private final boolean watches;
    private boolean looking;
    private long looked = System.nanoTime();
    private int failures;
    private Optional<String> leaving = Optional.empty();
    private boolean going = true;
    private boolean whole = true;

    /** A loop that can run once and keeps no drafts. */
    public Loop(TerminalPort terminal, EffectRunner runner, Log log) {
        this(terminal, runner, new RunKeep(Optional.empty()), log);
    }

    /** A loop that can run once and says what failed in English. */
    public Loop(TerminalPort terminal, EffectRunner runner, RunKeep keep, Log log) {
        this(terminal, runner, keep, log, Sentence::toString);
    }

    /**
     * A loop that can run once.
     *
     * @param speech says what failed in the language in use
     */
    public Loop(TerminalPort terminal, EffectRunner runner, RunKeep keep, Log log, Function<Sentence, String> speech) {
        this.speech = speech;
        this.terminal = terminal;
        this.log = log;
        this.workers = new Workers(runner, log, speech, queue::add);
        this.drafts = new DraftKeeper(keep, log, speech, queue::add);
        this.watches = runner.watches();
        runner.onWaiting(() -> queue.add(new Result(Shell.NOBODY, new Message.Waiting())));
    }

    /**
     * Runs it. When this returns, and when the program is ended by a signal, the terminal is as it was and work in
     * flight had two seconds to end.
     *
     * @return exit code of the program: {@link #DONE}, {@link #MISTAKE} or {@link #TERMINAL_LOST}, and for the last two
     *     the reason was printed
     */
    public int run(Shell first) {
        Ending ending = new Ending(terminal, this::finish);
        ending.guard();
        Log.Capture printing = log.capture();
        int code = DONE;
        String reason = "";
        try {
            begin(first);
        } catch (TerminalException e) {
            code = TERMINAL_LOST;
            if (!ending.bySignal()) {
                log.failure("In the terminal", e);
                reason = speech.apply(e.saying());
            }
        } catch (RuntimeException | Error e) {
            code = MISTAKE;
            reason = speech.apply(Sentence.of(
                    "Thalweg ended because of a mistake in the program; {0}", log.failure("In the interface", e)));
        } finally {
            looping = false;
            terminal.close();
            printing.close();
            ending.end();
        }
        if (!reason.isEmpty()) {
            System.err.println(reason);
        }
        return code;
    }

    /** Waits for work in flight, lets the screens know what came of it, and keeps what is not saved then. */
    private boolean finish() {
        boolean whole = workers.finish(PATIENCE);
        drafts.settle(PATIENCE);
        if (looping) {
            letSettle();
        } else {
            settle();
        }
        drafts.finish(PATIENCE);
        return whole;
    }

    /** Has the loop handle what has come, for as long as it is given when a signal ends the program. */
    private void letSettle() {
        CountDownLatch latch = new CountDownLatch(1);
        queue.add(new Settled(latch));
        try {
            latch.await(SETTLING, TimeUnit.MILLISECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    /** What was saved last must not come back as a draft, though nobody sees the answer any more. */
    private void settle() {
        try {
            for (Message message : queue) {
                if (message instanceof Result && last.isPresent()) {
                    Reaction reaction = last.get().update(message);
                    keep(reaction.shell());
                    reaction.work().stream()
                            .filter(work -> work.effect() instanceof Keep.Drop)
                            .forEach(this::start);
                }
            }
        } catch (RuntimeException | Error e) {
            log.failure("After the end", e);
        }
    }

    /** What is to begin in the place of this interface, once it has run; empty where it just ended. */
    public Optional<String> leaving() {
        return leaving;
    }

    private void begin(Shell first) {
        Thread reader = new Thread(this::read, "keys");
        reader.setDaemon(true);
        reader.start();
        Shell sized = resized(first);
        Shell started = reached(sized, sized::start);
        // What the first picture lacks is asked for before it: so much is loaded for painting meanwhile.
        startPostponed();
        Shell shell = paint(started);
        practice.on(shell);
        // Only now, for it takes a while and the first picture need not wait; what changed before is asked for.
        terminal.onResize(this::doubtSize);
        doubtSize();
        while (going) {
            for (Message message : waiting()) {
                if (going) {
                    shell = after(shell, message);
                } else {
                    // An answer that came with the key that ended it is still to be heard.
                    queue.add(message);
                }
            }
            if (going) {
                shell = paint(shell);
                startPostponed();
                practice.on(shell);
            }
        }
    }

    private void startPostponed() {
        postponed.forEach(workers::start);
        postponed.clear();
    }

    private void read() {
        try {
            List<Message> messages = terminal.read();
            while (!messages.isEmpty()) {
                queue.addAll(messages);
                messages = terminal.read();
            }
            queue.add(new InputEnded());
        } catch (RuntimeException | Error e) {
            queue.add(new ReadingBroke(e));
        }
    }

    /** Waits for a message, and takes with it what has come meanwhile. */
    private List<Message> waiting() {
        List<Message> messages = new ArrayList<>();
        try {
            messages.add(queue.take());
            practice.interrupt();
            queue.drainTo(messages);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            going = false;
        }
        return messages;
    }

    private Shell after(Shell shell, Message message) {
        if (message instanceof InputEnded) {
            throw new TerminalException(Sentence.of("The terminal is gone, so Thalweg ended."));
        }
        if (message instanceof ReadingBroke broke) {
            throw new IllegalStateException("reading the terminal failed", broke.cause());
        }
        if (message instanceof Settled settled) {
            settled.latch().countDown();
            return shell;
        }
        if (message instanceof SizeInDoubt) {
            return resized(shell);
        }
        look(message);
        return reached(shell, () -> shell.update(message));
    }

    /** While somebody is there, looks now and then whether another window has changed what is shown. */
    private void look(Message message) {
        if (message instanceof Result result) {
            looking &= result.frame() != Shell.NOBODY || result.message() instanceof Message.Waiting;
            return;
        }
        long now = System.nanoTime();
        boolean due = message instanceof Message.Focused || now - looked > TimeUnit.MILLISECONDS.toNanos(BETWEEN_LOOKS);
        if (due && watches && !looking) {
            looking = true;
            looked = now;
            start(new Work(Shell.NOBODY, new Effect.Look()));
        }
    }

    /** Follows a reaction; a screen that meets a mistake closes, and the others go on. */
    private Shell reached(Shell before, Supplier<Reaction> reaction) {
        try {
            return follow(reaction.get());
        } catch (ScreenFailure e) {
            return without(before, e);
        }
    }

    private Shell without(Shell shell, ScreenFailure failure) {
        failures++;
        if (failures > MOST_FAILURES) {
            throw new IllegalStateException("screens fail again and again", failure.mistake());
        }
        String where = log.failure("In a screen", failure.mistake());
        return reached(shell, () -> shell.without(failure.frame(), where));
    }

    /** Notices that come while one is waiting say nothing new. */
    private void doubtSize() {
        if (sizeInDoubt.compareAndSet(false, true)) {
            queue.add(new SizeInDoubt());
        }
    }

    /** Asks the terminal, which costs a process; the doubt ends before, lest a notice be missed that comes meanwhile. */
    private Shell resized(Shell shell) {
        sizeInDoubt.set(false);
        TerminalPort.Size size = terminal.size();
        return follow(shell.update(new Resized(size.rows(), size.columns())));
    }

    private void keep(Shell shell) {
        last = Optional.of(shell);
        drafts.after(shell);
    }

    /** The new state is known to the keeper of drafts before its work begins: what is dropped is not in it any more. */
    private Shell follow(Reaction reaction) {
        keep(reaction.shell());
        reaction.work().forEach(this::start);
        return switch (reaction.order()) {
            case NONE -> reaction.shell();
            case QUIT -> {
                going = false;
                yield reaction.shell();
            }
            case REPAINT -> {
                whole = true;
                yield resized(reaction.shell());
            }
            case SUSPEND -> {
                terminal.suspend();
                whole = true;
                yield resized(reaction.shell());
            }
        };
    }

    private void start(Work work) {
        if (work.effect() instanceof Effect.Copy copy) {
            copy(work.frame(), copy);
        } else if (work.effect() instanceof Effect.Stop) {
            workers.stop(work.frame());
        } else if (work.effect() instanceof Effect.Leave leave) {
            leaving = Optional.of(leave.to());
            going = false;
        } else if (work.effect() instanceof Keep asked) {
            drafts.start(work.frame(), asked);
        } else if (work.effect() instanceof Effect.AfterPicture) {
            postponed.add(work);
        } else {
            workers.start(work);
        }
    }

    private void copy(long frame, Effect.Copy copy) {
        try {
            terminal.copy(copy.text());
        } catch (AppException e) {
            queue.add(new Result(frame, new Message.Failed(copy, speech.apply(e.saying()))));
        }
    }

    /** Paints, and returns what was painted: without a screen that cannot be drawn. */
    private Shell paint(Shell shell) {
        Canvas canvas;
        try {
            canvas = shell.draw();
        } catch (ScreenFailure e) {
            return paint(without(shell, e));
        }
        if (whole) {
            terminal.repaint(canvas);
        } else {
            terminal.paint(canvas);
        }
        whole = false;
        failures = 0;
        return shell;
    }
}
