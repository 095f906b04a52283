package thalweg.storage;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFilePermissions;
import thalweg.fault.Sentence;
import thalweg.fault.StoreException;

/** Makes and looks at database files as files, before and after SQLite has them. */
final class DatabaseFile {

    private DatabaseFile() {}

    /**
     * Makes an empty file that only its owner may read: it will hold names of people and exact places.
     *
     * @throws StoreException when it cannot be made
     */
    static void create(Path file) {
        Path folder = file.toAbsolutePath().getParent();
        if (folder != null && !Files.isDirectory(folder)) {
            throw new StoreException(Sentence.of(
                    "There is no folder {0} to hold the database {1}; check the path or make the folder first.",
                    folder, file.getFileName()));
        }
        try {
            if (folder != null && Files.getFileStore(folder).supportsFileAttributeView("posix")) {
                Files.createFile(
                        file, PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-------")));
            } else {
                Files.createFile(file);
            }
        } catch (FileAlreadyExistsException e) {
            throw new StoreException(
                    Sentence.of("The database {0} is just being made by another program; try again.", file), e);
        } catch (IOException e) {
            throw new StoreException(
                    Sentence.of("The database {0} cannot be made; check that its folder may be written.", file), e);
        }
    }

    /**
     * Whether nothing is in it yet.
     *
     * @throws StoreException when it cannot be read
     */
    static boolean isEmpty(Path file) {
        try {
            return Files.size(file) == 0;
        } catch (IOException e) {
            throw new StoreException(Sentence.of("The database {0} cannot be read; check its permissions.", file), e);
        }
    }

    /**
     * Returns when the file is on the disk, whatever happens to the power then.
     *
     * @throws StoreException when the disk refuses
     */
    static void settle(Path file) {
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
            channel.force(true);
        } catch (IOException e) {
            throw new StoreException(
                    Sentence.of("The copy {0} cannot be written to the disk; check the disk.", file), e);
        }
    }

    /** Takes away a file that was begun and could not be finished. */
    static void discard(Path file, Throwable reason) {
        try {
            Files.deleteIfExists(file);
        } catch (IOException e) {
            reason.addSuppressed(e);
        }
    }
}
