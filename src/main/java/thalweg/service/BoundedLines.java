package thalweg.service;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.Optional;

/** The lines of a stream, as they come: of a line that is too long only its number is kept. */
final class BoundedLines {

    private final InputStream in;
    private final int longest;
    private final byte[] buffer = new byte[8192];
    private int at;
    private int end;
    private long number;

    /**
     * @param longest that a line may be without its end [bytes]
     */
    BoundedLines(InputStream in, int longest) {
        this.in = in;
        this.longest = longest;
    }

    /**
     * One line.
     *
     * @param number from 1
     * @param bytes without the line feed; empty where the line was too long
     */
    record Line(long number, Optional<byte[]> bytes) {}

    /**
     * The next line, waited for no longer than until its line feed is there; empty after the last.
     *
     * @throws IOException when the stream cannot be read
     */
    Optional<Line> next() throws IOException {
        if (!filled()) {
            return Optional.empty();
        }
        number++;
        ByteArrayOutputStream line = new ByteArrayOutputStream();
        boolean whole = true;
        boolean ended = false;
        while (!ended && filled()) {
            int from = at;
            while (at < end && buffer[at] != '\n') {
                at++;
            }
            whole = whole && line.size() + at - from <= longest;
            if (whole) {
                line.write(buffer, from, at - from);
            }
            ended = at < end;
            at += ended ? 1 : 0;
        }
        return Optional.of(new Line(number, whole ? Optional.of(line.toByteArray()) : Optional.empty()));
    }

    /** Whether there is anything left. */
    private boolean filled() throws IOException {
        while (at == end) {
            int read = in.read(buffer);
            if (read < 0) {
                return false;
            }
            at = 0;
            end = read;
        }
        return true;
    }
}
