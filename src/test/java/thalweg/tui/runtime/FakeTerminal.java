package thalweg.tui.runtime;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import thalweg.fault.Sentence;
import thalweg.tui.core.Canvas;
import thalweg.tui.core.Key;
import thalweg.tui.core.Message;

/** A terminal in memory: keys are given to it, and it remembers what it was told. */
final class FakeTerminal implements TerminalPort {

    /** A test that waits longer than this has failed [s]. */
    private static final long PATIENCE = 20;

    private static final List<Message> BROKEN = List.of(new Message.Returned());

    private final BlockingQueue<List<Message>> input = new LinkedBlockingQueue<>();
    private final List<String> told = new ArrayList<>();
    private Size size = new Size(24, 80);
    private String shown = "";
    private int paints;
    private boolean closed;
    private boolean broken;
    private Runnable onResize = () -> {};

    /** Presses keys, which arrive together. */
    void press(Key... keys) {
        List<Message> messages = new ArrayList<>();
        for (Key key : keys) {
            messages.add(new Message.KeyPressed(key));
        }
        input.add(messages);
    }

    /** The person comes back to the terminal. */
    void focus() {
        input.add(List.of(new Message.Focused()));
    }

    /** The terminal goes away. */
    void hangUp() {
        input.add(List.of());
    }

    /** The next reading fails by a mistake. */
    void breakInput() {
        input.add(BROKEN);
    }

    /** Whatever is painted next fails. */
    synchronized void breakOutput() {
        broken = true;
    }

    /** Has another size and says so, several times as terminals do. */
    void resize(int rows, int columns) {
        synchronized (this) {
            size = new Size(rows, columns);
        }
        for (int i = 0; i < 20; i++) {
            onResize.run();
        }
    }

    /** Waits until the screen shows a text. */
    synchronized void await(String text) throws InterruptedException {
        long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(PATIENCE);
        while (!shown.contains(text)) {
            long left = TimeUnit.NANOSECONDS.toMillis(end - System.nanoTime());
            if (left <= 0) {
                throw new AssertionError("\"" + text + "\" never came; the screen shows\n" + shown);
            }
            wait(left);
        }
    }

    /** What the terminal was told beside frames, in order. */
    synchronized List<String> told() {
        return List.copyOf(told);
    }

    /** What the last frame showed. */
    synchronized String shown() {
        return shown;
    }

    /** How many frames there were. */
    synchronized int paints() {
        return paints;
    }

    @Override
    public synchronized Size size() {
        told.add("size");
        return size;
    }

    @Override
    public List<Message> read() {
        try {
            List<Message> messages = input.take();
            if (messages.equals(BROKEN)) {
                throw new IllegalStateException("reading broke on purpose");
            }
            return messages;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return List.of();
        }
    }

    @Override
    public void onResize(Runnable toldThen) {
        onResize = toldThen;
    }

    @Override
    public synchronized void paint(Canvas canvas) {
        if (broken) {
            throw new TerminalException(Sentence.of("The terminal is broken."));
        }
        if (!closed) {
            shown = canvas.text();
            paints++;
            notifyAll();
        }
    }

    @Override
    public synchronized void repaint(Canvas canvas) {
        told.add("repaint");
        paint(canvas);
    }

    @Override
    public synchronized void copy(String text) {
        if (text.length() > 10) {
            throw new TerminalException(Sentence.of("Too long for this clipboard."));
        }
        told.add("copy " + text);
    }

    @Override
    public synchronized void suspend() {
        told.add("suspend");
    }

    @Override
    public synchronized void close() {
        if (!closed) {
            told.add("close");
        }
        closed = true;
    }
}
