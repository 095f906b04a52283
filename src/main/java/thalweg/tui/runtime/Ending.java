package thalweg.tui.runtime;

import java.util.function.BooleanSupplier;

/** What has to happen at every end of the program, whether the person or a signal brought it: TERM, HUP and INT. */
final class Ending {

    /** A terminal that takes no more output, behind a connection that hangs, must not keep the program from ending [ms]. */
    private static final long STALLED = 1000;

    private final TerminalPort terminal;
    private final BooleanSupplier finishWork;
    private final Thread hook = new Thread(this::onSignal, "ending");
    private volatile boolean signalled;

    /**
     * @param finishWork waits for work in flight and says whether it came to its end
     */
    Ending(TerminalPort terminal, BooleanSupplier finishWork) {
        this.terminal = terminal;
        this.finishWork = finishWork;
    }

    /** From now on a signal finds everything in order. */
    void guard() {
        Runtime.getRuntime().addShutdownHook(hook);
    }

    /** Gives the terminal back, then waits for work in flight. */
    void end() {
        terminal.close();
        finishWork();
        try {
            Runtime.getRuntime().removeShutdownHook(hook);
        } catch (IllegalStateException signalCameFirst) {
            // The hook runs already, finds the terminal given back and the work done, and the program ends with it.
            return;
        }
    }

    /** Whether a signal ends the program, so that a terminal that is closed is no news. */
    boolean bySignal() {
        return signalled;
    }

    private void onSignal() {
        signalled = true;
        Thread closing = new Thread(terminal::close, "closing");
        closing.setDaemon(true);
        closing.start();
        try {
            closing.join(STALLED);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        finishWork();
    }

    /** Goes to the person at an ordinary end, and to the log where a signal came while the screen was up. */
    private void finishWork() {
        if (!finishWork.getAsBoolean()) {
            System.err.println("Something that was still being done did not come to its end.");
        }
    }
}
