package thalweg.service;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Map;
import thalweg.fault.InputException;
import thalweg.fault.Sentence;

/** Finds and reads files that somebody names. */
public final class ReadFile {

    /** Larger files are no records of canyons and no waypoints of one [bytes]. */
    private static final long LARGEST = 64L * 1024 * 1024;

    private ReadFile() {}

    /**
     * Everything in the file.
     *
     * @throws InputException when it cannot be read, with what would do
     */
    public static byte[] bytes(Path file) {
        try {
            if (Files.isDirectory(file)) {
                throw new InputException(Sentence.of("{0} is a folder; name a file in it.", file));
            }
            if (Files.size(file) > LARGEST) {
                throw new InputException(Sentence.of("{0} is larger than 64 MB; export less into a file.", file));
            }
            return Files.readAllBytes(file);
        } catch (NoSuchFileException e) {
            throw new InputException(Sentence.of("There is no file {0}; check the path.", file), e);
        } catch (IOException e) {
            throw new InputException(Sentence.of("The file {0} cannot be read; check its permissions.", file), e);
        }
    }

    /**
     * The path as a person types or drops it into a field: quotes around it go, and a tilde is the home folder.
     *
     * @param environment variables by name
     * @throws InputException when it names nothing that can be read again and again, such as a device
     */
    public static Path typed(String text, Map<String, String> environment) {
        String plain = unquoted(text.strip());
        if (plain.isEmpty()) {
            throw new InputException(Sentence.of("The name of the file is empty; name one."));
        }
        try {
            Path home = Path.of(environment.getOrDefault("HOME", "."));
            Path path = plain.equals("~")
                    ? home
                    : plain.startsWith("~/") ? home.resolve(plain.substring(2)) : Path.of(plain);
            if (Files.exists(path) && !Files.isDirectory(path) && !Files.isRegularFile(path)) {
                throw new InputException(Sentence.of("{0} is a device or a pipe; name a file.", path));
            }
            return path;
        } catch (InvalidPathException e) {
            throw new InputException(Sentence.of("\"{0}\" is no name of a file; choose another.", plain), e);
        }
    }

    private static String unquoted(String text) {
        boolean quoted = text.length() > 1
                && (text.charAt(0) == '\'' || text.charAt(0) == '"')
                && text.charAt(0) == text.charAt(text.length() - 1);
        return quoted ? text.substring(1, text.length() - 1) : text;
    }
}
