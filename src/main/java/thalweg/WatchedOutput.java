package thalweg;

import java.io.BufferedOutputStream;
import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;

/** Standard output that remembers whether something was lost: a print stream swallows that. */
final class WatchedOutput extends FilterOutputStream {

    private boolean lost;

    WatchedOutput(OutputStream target) {
        super(new BufferedOutputStream(target));
    }

    @Override
    public void write(int oneByte) throws IOException {
        try {
            out.write(oneByte);
        } catch (IOException e) {
            throw noted(e);
        }
    }

    @Override
    public void write(byte[] bytes, int from, int length) throws IOException {
        try {
            out.write(bytes, from, length);
        } catch (IOException e) {
            throw noted(e);
        }
    }

    @Override
    public void flush() throws IOException {
        try {
            out.flush();
        } catch (IOException e) {
            throw noted(e);
        }
    }

    /** A reader that has seen enough, such as head, closes the pipe: nobody misses the rest. */
    private IOException noted(IOException failure) {
        String reason = failure.getMessage();
        lost = lost || reason == null || !reason.contains("Broken pipe");
        return failure;
    }

    /** Whether something that somebody waits for was not written. */
    boolean lostSomething() {
        return lost;
    }
}
