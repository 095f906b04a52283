package thalweg.tui.shell;

/** A mistake of the program in one screen: the others need not suffer from it. */
public final class ScreenFailure extends RuntimeException {

    private static final long serialVersionUID = 1;

    private final long frame;
    private final Throwable mistake;

    /**
     * @param frame number of the screen
     * @param mistake what was met
     */
    ScreenFailure(long frame, Throwable mistake) {
        super("a screen failed", mistake);
        this.frame = frame;
        this.mistake = mistake;
    }

    /** The mistake itself. */
    public Throwable mistake() {
        return mistake;
    }

    /** Number of the screen in which it happened. */
    public long frame() {
        return frame;
    }
}
