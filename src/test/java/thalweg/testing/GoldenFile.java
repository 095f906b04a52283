package thalweg.testing;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** A text kept beside the tests; {@code -Dgolden.update=true} rewrites it, and the difference is what is reviewed. */
public final class GoldenFile {

    private static final Path FOLDER = Path.of("src", "test", "resources", "golden");
    private static final Path DOCUMENTS = Path.of("src", "docs");

    private GoldenFile() {}

    /**
     * Holds the text against the file, letter by letter.
     *
     * @param name path of the file below the folder of golden files
     */
    public static void holds(String name, String text) {
        holds(FOLDER.resolve(name), text);
    }

    /**
     * Holds the text against a page that people read.
     *
     * @param name of the page below the folder of documents
     */
    public static void holdsDocument(String name, String text) {
        holds(DOCUMENTS.resolve(name), text);
    }

    private static void holds(Path file, String text) {
        try {
            if (Boolean.getBoolean("golden.update")) {
                Files.createDirectories(file.resolveSibling("").toAbsolutePath());
                Files.writeString(file, text);
            }
            assertThat(text).isEqualTo(Files.readString(file));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
