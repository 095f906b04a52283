package thalweg.cli;

import java.nio.file.Path;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import thalweg.service.WriteFile;

/** Where a command puts what it made: standard output, or a file that is never replaced unasked. */
final class Output {

    private final Surrounds surrounds;

    @Option(names = "--out", paramLabel = "PATH", description = "the file (default: standard output)")
    private @Nullable Path out;

    @Option(names = "--overwrite", description = "say that a file that is there may be replaced")
    private boolean overwrite;

    Output(Surrounds surrounds) {
        this.surrounds = surrounds;
    }

    /** The file, where one was named. */
    Optional<Path> file() {
        return Optional.ofNullable(out);
    }

    /** Whether a file that is there may be replaced. */
    boolean overwrites() {
        return overwrite;
    }

    /** Says where a result went. */
    void written(Path file) {
        surrounds.err().println("Written: " + file);
    }

    /** Prints what was made, or writes it whole to the file. */
    void put(byte[] bytes) {
        if (out == null) {
            surrounds.out().write(bytes, 0, bytes.length);
        } else {
            WriteFile.whole(out, bytes, overwrite);
            written(out);
        }
    }

    /** Prints the text, or writes it whole to the file. */
    void put(String text) {
        put(pieces -> pieces.accept(text));
    }

    /** The same piece by piece, as each is there. */
    void put(WriteFile.Text text) {
        if (out == null) {
            text.to(surrounds.out()::print);
        } else {
            WriteFile.whole(out, text, overwrite);
            written(out);
        }
    }
}
