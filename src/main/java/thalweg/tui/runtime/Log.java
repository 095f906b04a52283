package thalweg.tui.runtime;

import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.Set;

/**
 * A file for what no person should meet on the screen. Only its owner may read it: what went wrong may tell what somebody
 * was writing about. A log that cannot be written stops nothing.
 */
public final class Log {

    /** Beyond this size another file begins, and this one is kept as the only older one [bytes]. */
    static final long LONGEST = 1 << 20;

    private static final Set<StandardOpenOption> APPENDING =
            Set.of(StandardOpenOption.CREATE, StandardOpenOption.WRITE, StandardOpenOption.APPEND);

    private final Path file;
    private final Clock clock;

    /** A log in that file; the folder is made when there is something to write. */
    public Log(Path file, Clock clock) {
        this.file = file;
        this.clock = clock;
    }

    /** Writes a line with the time before it. */
    public void note(String line) {
        append(line);
    }

    /**
     * Writes down what went wrong.
     *
     * @param doing what was being done
     * @return where a person finds it, to go on after a semicolon: "the log at … says more."
     */
    public String failure(String doing, Throwable cause) {
        StringWriter trace = new StringWriter();
        cause.printStackTrace(new PrintWriter(trace, true));
        boolean written = append(doing + ": " + trace.toString().stripTrailing());
        return written ? "the log at " + file + " says more." : "the log at " + file + " could not be written.";
    }

    private boolean append(String text) {
        String line = Instant.now(clock).truncatedTo(ChronoUnit.SECONDS) + " " + text + System.lineSeparator();
        return write(line.getBytes(StandardCharsets.UTF_8));
    }

    private synchronized boolean write(byte[] bytes) {
        try (OutputStream out = open()) {
            out.write(bytes);
            return true;
        } catch (IOException e) {
            return false;
        }
    }

    /** Lets everything that is printed go into the log, for as long as the screen belongs to the interface. */
    Capture capture() {
        PrintStream out = System.out;
        PrintStream err = System.err;
        PrintStream into = new PrintStream(new Appended(), true, StandardCharsets.UTF_8);
        System.setOut(into);
        System.setErr(into);
        return () -> {
            into.flush();
            System.setOut(out);
            System.setErr(err);
        };
    }

    /** Printing into the log, until it is closed. */
    interface Capture extends AutoCloseable {
        @Override
        void close();
    }

    /** Opens the file only when something is printed, which should never be. */
    private final class Appended extends OutputStream {

        @Override
        public void write(int oneByte) {
            Log.this.write(new byte[] {(byte) oneByte});
        }

        @Override
        public void write(byte[] bytes, int from, int length) {
            Log.this.write(Arrays.copyOfRange(bytes, from, from + length));
        }
    }

    private OutputStream open() throws IOException {
        Path folder = file.toAbsolutePath().getParent();
        if (folder != null && !Files.isDirectory(folder)) {
            Files.createDirectories(folder, ownerOnly("rwx------"));
        }
        if (Files.exists(file) && Files.size(file) > LONGEST) {
            Files.move(file, file.resolveSibling(file.getFileName() + ".old"), StandardCopyOption.REPLACE_EXISTING);
        }
        return Channels.newOutputStream(FileChannel.open(file, APPENDING, ownerOnly("rw-------")));
    }

    private FileAttribute<?>[] ownerOnly(String permissions) {
        return file.getFileSystem().supportedFileAttributeViews().contains("posix")
                ? new FileAttribute<?>[] {
                    PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString(permissions))
                }
                : new FileAttribute<?>[0];
    }
}
