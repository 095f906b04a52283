package thalweg.tui.lanterna;

import java.io.Closeable;
import java.io.FileInputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import thalweg.tui.core.Message;

/** Reads the keys of a terminal that is set to raw keys, and measures the time that its decoder needs. */
final class KeySource implements Closeable {

    /** The rest of what Esc begins comes within this time where the keyboard is near, or else never [ms]. */
    private static final long NEAR = 40;

    /** The same over a network [ms]. */
    private static final long REMOTE = 100;

    /** A sequence of which the rest does not come in this time was broken off [ms]. */
    private static final long BROKEN_OFF = 500;

    /** Between two looks whether a byte has come [ms]. */
    private static final long LOOK = 2;

    private final FileInputStream stream;
    private final FileChannel channel;
    private final KeyDecoder decoder;
    private final long escapeTime;
    private final byte[] buffer = new byte[4096];

    KeySource(Path device, KeyDecoder decoder, boolean remote) throws IOException {
        this.stream = new FileInputStream(device.toFile());
        this.channel = stream.getChannel();
        this.decoder = decoder;
        this.escapeTime = remote ? REMOTE : NEAR;
    }

    /** Waits for keys; empty once the terminal is closed or gone. */
    List<Message> read() {
        try {
            List<Message> messages = List.of();
            while (messages.isEmpty()) {
                if (comes()) {
                    int length = channel.read(ByteBuffer.wrap(buffer));
                    if (length < 0) {
                        return List.of();
                    }
                    messages = decoder.feed(buffer, length);
                } else {
                    messages = decoder.settle();
                }
            }
            return messages;
        } catch (IOException closedOrGone) {
            return List.of();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return List.of();
        }
    }

    /** Whether the decoder gets a byte in time; where it has endless patience, reading itself waits. */
    private boolean comes() throws IOException, InterruptedException {
        return switch (decoder.patience()) {
            case ENDLESS -> true;
            case SHORT -> comesWithin(escapeTime);
            case LONG -> comesWithin(BROKEN_OFF);
        };
    }

    private boolean comesWithin(long milliseconds) throws IOException, InterruptedException {
        long end = System.nanoTime() + TimeUnit.MILLISECONDS.toNanos(milliseconds);
        while (stream.available() == 0) {
            if (System.nanoTime() - end >= 0) {
                return false;
            }
            Thread.sleep(LOOK);
        }
        return true;
    }

    /** Wakes the thread that reads; a channel does that, a plain stream would wait for the next key. */
    @Override
    public void close() throws IOException {
        channel.close();
    }
}
