package thalweg.tui.lanterna;

import com.googlecode.lanterna.TerminalSize;
import java.io.BufferedOutputStream;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import thalweg.fault.Sentence;
import thalweg.tui.core.Canvas;
import thalweg.tui.core.Message;
import thalweg.tui.runtime.TerminalException;
import thalweg.tui.runtime.TerminalPort;

/**
 * The terminal that the program was started in, painted through Lanterna's screen.
 *
 * <p>From {@link #open} to {@link #close} it shows its other screen, sends raw keys, pastes as one piece, and the mouse if
 * that is wanted.
 */
public final class LanternaTerminal implements TerminalPort {

    private static final Path DEVICE = Path.of("/dev/tty");

    /** More than a frame of 200 by 60 cells that all have another colour: one frame is one write [bytes]. */
    private static final int FRAME = 1 << 18;

    private final TerminalOptions options;
    private final Stty stty;
    private final OutputStream out;
    private final CellTerminal cells;
    private final CellPainter painter;
    private final KeySource keys;
    private String settings;
    private Size size;
    private boolean sizeIsNew = true;
    private boolean closed;

    private LanternaTerminal(TerminalOptions options, Stty stty, Stty.Found found) throws IOException {
        this.options = options;
        this.stty = stty;
        this.settings = found.settings();
        this.size = found.size();
        this.out = new BufferedOutputStream(new FileOutputStream(DEVICE.toFile()), FRAME);
        this.cells = new CellTerminal(out, lanterna(size), options.mouse());
        this.painter = new CellPainter(cells, new Palette(options.theme()));
        this.keys = new KeySource(DEVICE, new KeyDecoder(found.backspaceIsCtrlH()), options.remote());
    }

    /**
     * Takes over the terminal that the program was started in.
     *
     * @throws TerminalException when there is none
     */
    public static LanternaTerminal open(TerminalOptions options) {
        Stty stty = new Stty(DEVICE);
        Stty.Found found;
        try {
            found = stty.enterRaw();
        } catch (IOException e) {
            throw new TerminalException(
                    Sentence.of(
                            "The screen needs a terminal, and there is none that its settings could be read from; the"
                                    + " commands work without one: thalweg --help lists them."),
                    e);
        }
        try {
            LanternaTerminal terminal = new LanternaTerminal(options, stty, found);
            terminal.painter.start();
            return terminal;
        } catch (IOException e) {
            giveBack(stty, found.settings());
            throw new TerminalException(Sentence.of("The terminal cannot be written to, so there is no screen."), e);
        }
    }

    private static void giveBack(Stty stty, String settings) {
        try {
            stty.restore(settings);
        } catch (IOException e) {
            System.err.println("The terminal's settings could not be put back; the command \"reset\" does that.");
        }
    }

    private static TerminalSize lanterna(Size size) {
        return new TerminalSize(size.columns(), size.rows());
    }

    @Override
    public synchronized Size size() {
        if (sizeIsNew) {
            sizeIsNew = false;
            return size;
        }
        whileOpen(() -> {
            size = stty.size().orElse(size);
            cells.resize(lanterna(size));
        });
        return size;
    }

    @Override
    public List<Message> read() {
        return keys.read();
    }

    @Override
    public void onResize(Runnable told) {
        Resizes.tell(told);
    }

    @Override
    public synchronized void paint(Canvas canvas) {
        whileOpen(() -> painter.paint(canvas));
    }

    @Override
    public synchronized void repaint(Canvas canvas) {
        whileOpen(() -> painter.repaint(canvas));
    }

    @Override
    public synchronized void copy(String text) {
        String sequence = Clipboard.sequence(text, options.insideTmux())
                .orElseThrow(() -> new TerminalException(Sentence.of(
                        "This text is too long for a terminal's clipboard, which takes {0} bytes; save it to a file.",
                        String.format(Locale.ROOT, "%,d", Clipboard.LONGEST))));
        whileOpen(() -> {
            cells.write(sequence);
            cells.flush();
        });
    }

    @Override
    public synchronized void suspend() {
        whileOpen(() -> {
            painter.stop();
            stty.restore(settings);
            stty.stopGroup();
            // Whoever fetched the program back may have changed the settings; those are the ones to give back then.
            settings = stty.enterRaw().settings();
            painter.start();
        });
    }

    @Override
    public synchronized void close() {
        if (closed) {
            return;
        }
        closed = true;
        attempt(painter::stop);
        attempt(out::close);
        attempt(keys::close);
        giveBack(stty, settings);
    }

    /** Something that meets the terminal. */
    private interface Act {
        void run() throws IOException;
    }

    /** Each step of closing is taken, whatever became of the one before: a terminal that is gone takes none. */
    private static void attempt(Act act) {
        try {
            act.run();
        } catch (IOException terminalGone) {
            return;
        }
    }

    /** Does it unless the terminal was given back. */
    private void whileOpen(Act act) {
        if (closed) {
            return;
        }
        try {
            act.run();
        } catch (IOException e) {
            throw new TerminalException(Sentence.of("The terminal does not answer any more, so Thalweg ended."), e);
        }
    }
}
