package thalweg.tui.shell;

/** A mistake of the program in one screen: the others need not suffer from it. */
public final class ScreenFailure extends RuntimeException {

    private static final long serialVersionUID = 1;

    private final long frame;

    /**
     * @param frame number of the screen
     * @param cause the mistake
     */
    ScreenFailure(long frame, Throwable cause) {
        super("a screen failed", cause);
        this.frame = frame;
    }

    /** Number of the screen in which it happened. */
    public long frame() {
        return frame;
    }
}
