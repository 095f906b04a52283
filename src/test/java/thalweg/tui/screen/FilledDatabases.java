package thalweg.tui.screen;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Comparator;
import java.util.HashMap;
import java.util.Map;
import java.util.stream.Stream;
import thalweg.service.ImportRecords;
import thalweg.service.Session;

/** Databases that hold a file of records: each file is imported once and copied from then on, since importing is slow. */
final class FilledDatabases {

    private static final String NAME = "records.db";
    private static final Map<String, Path> FILLED = new HashMap<>();

    private FilledDatabases() {}

    /** A folder with a database of one's own, in a file of the name {@link #in}. */
    static Path copy(byte[] records, Clock clock, String keeper) {
        Path folder = folder();
        into(folder, records, clock, keeper);
        return folder;
    }

    /** Puts such a database into a folder that is there. */
    static synchronized void into(Path into, byte[] records, Clock clock, String keeper) {
        Path filled = FILLED.computeIfAbsent(new String(records, StandardCharsets.UTF_8), text -> {
            Path folder = folder();
            Path file = in(folder);
            try (Session session = Session.creating(file, clock, keeper)) {
                ImportRecords imports = new ImportRecords(session);
                imports.accept(imports.preview("sample", records).plan());
            }
            folder.toFile().deleteOnExit();
            file.toFile().deleteOnExit();
            return file;
        });
        try {
            Files.copy(filled, in(into));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static Path in(Path folder) {
        return folder.resolve(NAME);
    }

    /** Deletes such a folder with what is in it, the innermost first. */
    static void delete(Path folder) {
        try (Stream<Path> within = Files.walk(folder)) {
            for (Path file : within.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(file);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Path folder() {
        try {
            return Files.createTempDirectory("walk");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
