package thalweg.bench;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import java.util.regex.Pattern;

/**
 * A program in a pseudo-terminal that the command {@code script} opens: its output is stamped as it comes. Times are those of
 * this process, so they hold the way through {@code script} as well.
 */
final class Pty implements AutoCloseable {

    private static final long PATIENCE_SECONDS = 120;

    /** After every character but those that begin a sequence. */
    private static final Pattern KEY_ENDS = Pattern.compile("(?<=[^\\033\\[])");

    /** Ctrl-L. */
    private static final String REPAINT = "\014";

    private final Process process;
    private final long begun;
    private final StringBuilder seen = new StringBuilder();
    private long first;
    private long last;
    private boolean ended;

    private Pty(ProcessBuilder builder) throws IOException {
        this.begun = System.nanoTime();
        this.process = builder.start();
        Thread reader = new Thread(this::read, "screen");
        reader.setDaemon(true);
        reader.start();
    }

    /**
     * Starts a command of the shell.
     *
     * @param home folder for all that the program keeps
     */
    static Pty start(Path home, int rows, int columns, String command) throws IOException {
        ProcessBuilder builder = new ProcessBuilder(
                "script", "-qec", "stty rows " + rows + " cols " + columns + "; exec " + command, "/dev/null");
        builder.redirectErrorStream(true);
        for (String name : List.of("data", "state", "cache", "config")) {
            builder.environment().put("XDG_" + name.toUpperCase(Locale.ROOT) + "_HOME", "" + home.resolve(name));
        }
        builder.environment().put("TERM", "xterm-256color");
        builder.environment().put("LC_ALL", "C.UTF-8");
        return new Pty(builder);
    }

    private void read() {
        byte[] some = new byte[65536];
        try (InputStream screen = process.getInputStream()) {
            for (int length = screen.read(some); length >= 0; length = screen.read(some)) {
                long now = System.nanoTime();
                synchronized (this) {
                    first = first == 0 ? now : first;
                    last = now;
                    seen.append(new String(some, 0, length, StandardCharsets.UTF_8));
                    notifyAll();
                }
            }
        } catch (IOException closed) {
            // The program was ended before it had said everything; whoever waits for more is told so.
        } finally {
            synchronized (this) {
                ended = true;
                notifyAll();
            }
        }
    }

    /** From the start until that text has come [µs]. */
    synchronized double untilShown(String text) throws IOException, InterruptedException {
        long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(PATIENCE_SECONDS);
        while (seen.indexOf(text) < 0) {
            if (ended || System.nanoTime() > end) {
                throw new IOException("\"" + text + "\" never came; there was: " + tail());
            }
            wait(100);
        }
        return (last - begun) / 1e3;
    }

    /** Types, and has everything painted anew until a text stands there: what changes alone may come in pieces. */
    void type(String keys, String until) throws IOException, InterruptedException {
        for (String key : KEY_ENDS.splitAsStream(keys).toList()) {
            press(key);
        }
        long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(PATIENCE_SECONDS);
        int from;
        do {
            if (System.nanoTime() > end) {
                throw new IOException("\"" + until + "\" never came after " + keys + "; there was: " + tail());
            }
            synchronized (this) {
                from = seen.length();
            }
            press(REPAINT);
        } while (!shown(until, from));
    }

    private synchronized String tail() {
        return seen.substring(Math.max(0, seen.length() - 4000));
    }

    private synchronized boolean shown(String text, int from) {
        return seen.indexOf(text, from) >= 0;
    }

    /**
     * What one key costs.
     *
     * @param first from the key to the first byte that answers it [µs]
     * @param last to the last byte before a pause [µs]
     */
    record Answer(double first, double last) {}

    /** Types a key and waits until all that comes of it has come. */
    Answer press(String key) throws IOException, InterruptedException {
        synchronized (this) {
            first = 0;
        }
        long sent = System.nanoTime();
        send(key);
        synchronized (this) {
            long end = sent + TimeUnit.SECONDS.toNanos(PATIENCE_SECONDS);
            while (first == 0) {
                if (ended || System.nanoTime() > end) {
                    throw new IOException("a key was not answered");
                }
                wait(100);
            }
        }
        settle();
        synchronized (this) {
            return new Answer((first - sent) / 1e3, (last - sent) / 1e3);
        }
    }

    private void send(String keys) throws IOException {
        OutputStream out = process.getOutputStream();
        out.write(keys.getBytes(StandardCharsets.UTF_8));
        out.flush();
    }

    /** Waits until nothing has come for a while, longer than the program waits for more letters of a search. */
    void settle() throws InterruptedException {
        while (true) {
            long quiet;
            synchronized (this) {
                quiet = System.nanoTime() - last;
            }
            if (quiet > TimeUnit.MILLISECONDS.toNanos(250)) {
                return;
            }
            Thread.sleep(20);
        }
    }

    /** The process of the program itself, which the start script has started. */
    ProcessHandle program() throws IOException {
        return process.descendants()
                .filter(one -> one.info()
                        .command()
                        .filter(name -> name.endsWith("/java"))
                        .isPresent())
                .findFirst()
                .orElseThrow(() -> new IOException("no Java runs below the start script"));
    }

    /** Types what ends the program, and waits for its end [µs]. */
    double end(String keys) throws IOException, InterruptedException {
        long sent = System.nanoTime();
        if (!keys.isEmpty()) {
            send(keys);
        }
        if (!process.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS) || process.exitValue() != 0) {
            throw new IOException("the program did not end as it should");
        }
        return (System.nanoTime() - sent) / 1e3;
    }

    @Override
    public void close() {
        process.descendants().forEach(ProcessHandle::destroy);
        process.destroy();
    }
}
