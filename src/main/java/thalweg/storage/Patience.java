package thalweg.storage;

import java.util.concurrent.TimeUnit;
import org.sqlite.BusyHandler;

/**
 * Waits while another program writes the database, tries again and again, and gives up after a while. Whoever wants to
 * know is told that it waits.
 */
final class Patience extends BusyHandler {

    /** Between two tries [ms]. */
    private static final long APART = 20;

    /** Nobody notices a shorter wait [ms]. */
    private static final long NOTICED = 250;

    private final long longest;
    private Runnable told = () -> {};
    private long began;
    private boolean said;

    /**
     * @param longest how long to wait [ms]
     */
    Patience(int longest) {
        this.longest = longest;
    }

    /** Is told, from the thread that waits, once for each wait that somebody may notice. */
    synchronized void tell(Runnable waiting) {
        told = waiting;
    }

    @Override
    protected synchronized int callback(int before) {
        long now = System.nanoTime();
        if (before == 0) {
            began = now;
            said = false;
        }
        long waited = TimeUnit.NANOSECONDS.toMillis(now - began);
        if (waited >= longest) {
            return 0;
        }
        if (waited >= NOTICED && !said) {
            said = true;
            told.run();
        }
        try {
            Thread.sleep(Math.min(APART, Math.max(1, longest - waited)));
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return 0;
        }
        return 1;
    }
}
