package thalweg.tui.runtime;

import java.util.List;
import thalweg.tui.core.Canvas;
import thalweg.tui.core.Message;

/**
 * A terminal, as the loop sees it. One thread reads, another does everything else, and {@code close} may come from any:
 * after it nothing is painted any more.
 */
public interface TerminalPort extends AutoCloseable {

    /**
     * How many cells there are.
     *
     * @param rows 1 or more
     * @param columns 1 or more
     */
    record Size(int rows, int columns) {

        public Size {
            if (rows < 1 || columns < 1) {
                throw new IllegalArgumentException("a terminal has a cell");
            }
        }
    }

    /** How large the terminal is at this moment; asks the system, except for what it knows from being opened. */
    Size size();

    /**
     * Waits for keys, pasted text and the mouse.
     *
     * @return what happened, in order; empty once the terminal is closed or gone
     */
    List<Message> read();

    /** Has it told when the terminal may have another size: from any thread, and more often than it has. */
    void onResize(Runnable told);

    /**
     * Shows a canvas; only what differs from the last one is sent.
     *
     * @param canvas as large as the terminal was when it was last asked
     * @throws TerminalException when the terminal is gone
     */
    void paint(Canvas canvas);

    /** Shows a canvas and sends all of it, whatever was there. */
    void repaint(Canvas canvas);

    /**
     * Puts a text on the clipboard of the person's terminal, if the terminal allows that: it does not say.
     *
     * @throws TerminalException when it is too long for that
     */
    void copy(String text);

    /** Gives the terminal back and stops, as Ctrl-Z does, until the program is fetched back; the screen is blank then. */
    void suspend();

    /** Gives the terminal back as it was; once, however often it is called. */
    @Override
    void close();
}
