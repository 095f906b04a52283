package thalweg.tui.runtime;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import thalweg.tui.core.Key;
import thalweg.tui.core.Message;
import thalweg.tui.core.Screen;
import thalweg.tui.shell.ScreenFailure;
import thalweg.tui.shell.Shell;

/**
 * Works out what the next keys would show while nobody presses one, and throws it away. Java runs code some ten times slower
 * until it has compiled it, and without this the first twenty keys on each kind of screen would wait for that.
 *
 * <p>Screens are values, and what a step of them asks for is not done here, so that nobody can tell.
 */
final class Practice {

    private static final List<Key> KEYS = Stream.of(
                    Key.Named.DOWN, Key.Named.RIGHT, Key.Named.PAGE_DOWN, Key.Named.END, Key.Named.LEFT, Key.Named.UP)
            .map(Key::of)
            .toList();

    /** So often each key is tried: the compiler takes up what was called 200 times, and a picture calls most things often. */
    private static final int ROUNDS = 8;

    /** After so long a kind of screen has had its share, however few keys that were [ns]: some rigs take long to compute. */
    private static final long SHARE = 800_000_000L;

    /** Nothing may have happened for so long [ms]: whoever types has the processor. */
    private static final long PAUSE = 80;

    /** Rounds that were done on each kind of screen; of the practising thread alone. */
    private final Map<Class<? extends Screen>, Integer> done = new HashMap<>();

    private Optional<Shell> shown = Optional.empty();
    private boolean begun;

    /** Counts what happened, so that practice gives way at once. */
    private volatile int happenings;

    /** The person sees this now. */
    synchronized void on(Shell shell) {
        shown = Optional.of(shell);
        interrupt();
        notifyAll();
        if (!begun) {
            begun = true;
            Thread thread = new Thread(this::run, "practice");
            thread.setDaemon(true);
            thread.start();
        }
    }

    /** Something has come that is to be answered. */
    synchronized void interrupt() {
        happenings++;
    }

    private void run() {
        try {
            while (true) {
                onShown(undisturbed());
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    /** Waits until something was shown and nothing happened since for a while. */
    private synchronized Shell undisturbed() throws InterruptedException {
        while (true) {
            if (shown.isEmpty()) {
                wait();
            } else {
                int before = happenings;
                wait(PAUSE);
                if (before == happenings) {
                    Shell shell = shown.get();
                    shown = Optional.empty();
                    return shell;
                }
            }
        }
    }

    private void onShown(Shell shell) {
        Optional<Class<? extends Screen>> scene = shell.scene();
        if (scene.isPresent()) {
            int before = happenings;
            long end = System.nanoTime() + SHARE;
            int rounds = done.getOrDefault(scene.get(), 0);
            while (rounds < ROUNDS && round(shell, before, end)) {
                rounds++;
            }
            done.put(scene.get(), System.nanoTime() > end ? ROUNDS : rounds);
        }
    }

    /** Whether it came to its end before something happened, and before the share of the time was used up. */
    private boolean round(Shell shell, int before, long end) {
        for (Key key : KEYS) {
            if (happenings != before || System.nanoTime() > end) {
                return false;
            }
            attempt(shell, key);
        }
        return true;
    }

    private static void attempt(Shell shell, Key key) {
        try {
            Shell next = shell.update(new Message.KeyPressed(key)).shell();
            next.drafts();
            next.draw();
        } catch (ScreenFailure mistake) {
            // It is met again, and told and written down, when somebody presses that key.
            return;
        }
    }
}
