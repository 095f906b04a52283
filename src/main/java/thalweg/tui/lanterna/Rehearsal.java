package thalweg.tui.lanterna;

import com.googlecode.lanterna.TerminalSize;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Iterator;
import java.util.List;
import thalweg.tui.core.Canvas;
import thalweg.tui.core.Message;
import thalweg.tui.runtime.TerminalPort;

/**
 * A terminal that nobody sits at: its keys are told beforehand and what is painted goes nowhere. It takes the same way
 * from bytes to keys and from canvases to bytes as a real one, so that a walk in it needs the classes that people's walks
 * need.
 */
public final class Rehearsal implements TerminalPort {

    private static final Path NOWHERE = Path.of("/dev/null");

    private static final Size SIZE = new Size(40, 120);

    private final KeyDecoder decoder = new KeyDecoder(false);
    private final CellPainter painter;
    private final Iterator<String> keys;
    private final long pause;

    /**
     * @param keys as a terminal sends them, one after the other; the last one should end the program
     * @param pause before each, so that what the one before asked for is there [ms]
     */
    public Rehearsal(TerminalOptions options, List<String> keys, long pause) {
        this.keys = List.copyOf(keys).iterator();
        this.pause = pause;
        try {
            OutputStream out = OutputStream.nullOutputStream();
            this.painter = new CellPainter(
                    new CellTerminal(out, new TerminalSize(SIZE.columns(), SIZE.rows()), options.mouse()),
                    new Palette(options.theme()));
            painter.start();
            // What a real terminal is asked and read by; both find nothing here.
            new Stty(NOWHERE).size();
            try (KeySource source = new KeySource(NOWHERE, decoder, false)) {
                source.read();
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public Size size() {
        return SIZE;
    }

    @Override
    public List<Message> read() {
        if (!keys.hasNext()) {
            return List.of();
        }
        try {
            Thread.sleep(pause);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return List.of();
        }
        byte[] bytes = keys.next().getBytes(StandardCharsets.UTF_8);
        List<Message> messages = decoder.feed(bytes, bytes.length);
        return messages.isEmpty() ? decoder.settle() : messages;
    }

    @Override
    public void onResize(Runnable told) {
        Resizes.tell(told);
    }

    @Override
    public synchronized void paint(Canvas canvas) {
        draw(() -> painter.paint(canvas));
    }

    @Override
    public synchronized void repaint(Canvas canvas) {
        draw(() -> painter.repaint(canvas));
    }

    private interface Drawing {
        void run() throws IOException;
    }

    private static void draw(Drawing drawing) {
        try {
            drawing.run();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** There is no clipboard. */
    @Override
    public void copy(String text) {}

    /** There is nothing to fetch it back. */
    @Override
    public void suspend() {}

    @Override
    public synchronized void close() {
        draw(painter::stop);
    }
}
