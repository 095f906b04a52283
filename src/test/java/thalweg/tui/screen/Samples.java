package thalweg.tui.screen;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** The sample data of the project. */
final class Samples {

    private Samples() {}

    static byte[] bytes() {
        try {
            return Files.readAllBytes(Path.of("sample-data", "records.json"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
