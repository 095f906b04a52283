package thalweg.service;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.function.Consumer;
import thalweg.fault.InputException;
import thalweg.fault.Sentence;
import thalweg.fault.ThereAlreadyException;

/** Writes what was made to a file, whole or not at all. */
public final class WriteFile {

    private WriteFile() {}

    /** Writes a text piece by piece. */
    @FunctionalInterface
    public interface Text {
        void to(Consumer<String> out);
    }

    /**
     * Writes beside the target and moves it there.
     *
     * @param overwrite whether a file that is there may be replaced
     * @throws InputException when it may not, or cannot be written
     */
    public static void whole(Path target, String text, boolean overwrite) {
        whole(target, text.getBytes(StandardCharsets.UTF_8), overwrite);
    }

    /** The same with what is no text, or already in its bytes. */
    public static void whole(Path target, byte[] bytes, boolean overwrite) {
        moved(target, out -> out.write(bytes), overwrite);
    }

    /**
     * The same, of which no more is in memory than a piece.
     *
     * @throws InputException when it may not be replaced, or cannot be written
     */
    public static void whole(Path target, Text text, boolean overwrite) {
        moved(target, out -> text.to(piece -> append(out, piece)), overwrite);
    }

    private interface Content {
        void to(OutputStream out) throws IOException;
    }

    private static void moved(Path target, Content content, boolean overwrite) {
        if (target.toString().isBlank()) {
            throw new InputException(Sentence.of("The name of the file to write is empty; name one."));
        }
        if (Files.isDirectory(target)) {
            throw new InputException(Sentence.of("{0} is a folder; name a file in it.", target));
        }
        if (Files.exists(target) && !Files.isRegularFile(target)) {
            throw new InputException(
                    Sentence.of("{0} is no file that can be replaced, but a device or a pipe; name a file.", target));
        }
        if (Files.exists(target) && !overwrite) {
            throw new ThereAlreadyException(target.toString());
        }
        Path folder = target.toAbsolutePath().getParent();
        if (folder == null || !Files.isDirectory(folder)) {
            throw new InputException(
                    Sentence.of("There is no folder {0}; make it first or name another.", String.valueOf(folder)));
        }
        try {
            Path aside = Files.createTempFile(folder, ".thalweg-", ".part");
            try {
                try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(aside))) {
                    content.to(out);
                } catch (UncheckedIOException e) {
                    throw e.getCause();
                }
                Files.move(aside, target, StandardCopyOption.REPLACE_EXISTING);
            } finally {
                Files.deleteIfExists(aside);
            }
        } catch (IOException e) {
            throw new InputException(
                    Sentence.of(
                            "{0} cannot be written; check that the folder may be written and the disk has room.",
                            target),
                    e);
        }
    }

    private static void append(OutputStream out, String piece) {
        try {
            out.write(piece.getBytes(StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
