package thalweg.service;

import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Comparator;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import thalweg.fault.Sentence;
import thalweg.fault.StoreException;

/**
 * Where the program keeps things.
 *
 * @param data databases
 * @param state the log, and what was typed and not saved
 * @param cache what can be made again at any time
 * @param config what a person has set
 * @see "XDG Base Directory Specification"
 */
public record Folders(Path data, Path state, Path cache, Path config) {

    private static final String NAME = "thalweg";

    /**
     * The folders that the environment asks for.
     *
     * @param environment variables by name
     */
    public static Folders of(Map<String, String> environment) {
        Path home = Path.of(environment.getOrDefault("HOME", "."));
        return new Folders(
                folder(environment, "XDG_DATA_HOME")
                        .orElse(home.resolve(".local/share"))
                        .resolve(NAME),
                folder(environment, "XDG_STATE_HOME")
                        .orElse(home.resolve(".local/state"))
                        .resolve(NAME),
                folder(environment, "XDG_CACHE_HOME")
                        .orElse(home.resolve(".cache"))
                        .resolve(NAME),
                folder(environment, "XDG_CONFIG_HOME")
                        .orElse(home.resolve(".config"))
                        .resolve(NAME));
    }

    /** Only absolute paths count, as the specification says. */
    private static Optional<Path> folder(Map<String, String> environment, String name) {
        return Optional.ofNullable(environment.get(name))
                .filter(text -> !text.isBlank())
                .map(Path::of)
                .filter(Path::isAbsolute);
    }

    /** The user's own database. */
    public Path database() {
        return data.resolve("records.db");
    }

    /** The user's copy of the demo. */
    public Path demo() {
        return data.resolve("demo.db");
    }

    /** The user's own settings, which need not be there. */
    public Path settings() {
        return config.resolve("settings.json");
    }

    /** Fonts that a person put in place, which need not be there. */
    public Path fonts() {
        return data.resolve("fonts");
    }

    /** What was typed and not saved, of all databases. */
    public Path drafts() {
        return state.resolve("drafts");
    }

    /** The log. */
    public Path log() {
        return state.resolve("thalweg.log");
    }

    /**
     * Makes a folder that only its owner may enter, unless it is there.
     *
     * @throws StoreException when it cannot be made
     */
    public static void make(Path folder) {
        if (Files.isDirectory(folder)) {
            return;
        }
        try {
            Path parent = folder.toAbsolutePath().getParent();
            if (parent != null) {
                Files.createDirectories(parent);
            }
            if (Files.getFileStore(folder.toAbsolutePath().getParent()).supportsFileAttributeView("posix")) {
                Files.createDirectories(
                        folder, PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rwx------")));
            } else {
                Files.createDirectories(folder);
            }
        } catch (IOException e) {
            throw new StoreException(
                    Sentence.of("The folder {0} cannot be made; check that its place may be written.", folder), e);
        }
    }

    /** Deletes a folder that can be made again, with everything in it; what cannot be deleted stays. */
    public static void delete(Path folder) {
        try (Stream<Path> all = Files.walk(folder)) {
            all.sorted(Comparator.reverseOrder()).map(Path::toFile).forEach(File::delete);
        } catch (IOException | UncheckedIOException e) {
            return;
        }
    }
}
