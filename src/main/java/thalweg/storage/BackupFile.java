package thalweg.storage;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import thalweg.fault.Sentence;
import thalweg.fault.StoreException;

/** A backup that is looked at and put in the place of a database, by way of a copy of its own that is thrown away. */
public final class BackupFile implements AutoCloseable {

    private final Path backup;
    private final Path copy;
    private final Database opened;

    private BackupFile(Path backup, Path copy, Database opened) {
        this.backup = backup;
        this.copy = copy;
        this.opened = opened;
    }

    /**
     * Copies the backup beside the database that it is for and opens the copy; the backup itself is only read.
     *
     * @param target the database, which need not be there
     * @throws StoreException when the backup is missing, foreign, newer or damaged, or there is no room
     */
    public static BackupFile open(Path backup, Path target) {
        Path copy = target.resolveSibling(target.getFileName() + ".restoring");
        try {
            if (Files.exists(target) && Files.isSameFile(backup, target)) {
                throw new StoreException(Sentence.of("{0} is the database itself; name a backup of it.", backup));
            }
            if (Files.isDirectory(backup)) {
                throw new StoreException(Sentence.of("{0} is a folder; name one of the backups in it.", backup));
            }
            if (!Files.isRegularFile(backup)) {
                throw new StoreException(Sentence.of("There is no backup {0}; check the path.", backup));
            }
            Files.deleteIfExists(copy);
            DatabaseFile.create(copy);
            Files.copy(backup, copy, StandardCopyOption.REPLACE_EXISTING);
        } catch (NoSuchFileException e) {
            throw new StoreException(Sentence.of("There is no backup {0}; check the path.", backup), e);
        } catch (IOException e) {
            throw new StoreException(
                    Sentence.of(
                            "The backup {0} cannot be copied to {1}; check the permissions and the room on the disk.",
                            backup, copy),
                    e);
        }
        try {
            return new BackupFile(backup, copy, Database.openCopy(copy));
        } catch (StoreException e) {
            DatabaseFile.discard(copy, e);
            throw new StoreException(
                    Sentence.plain(ofBackup(e.sentence()
                            .replace("The database " + copy, "The backup " + backup)
                            .replace(copy.toString(), backup.toString()))),
                    e);
        }
    }

    /** What is wrong with it, one sentence each. */
    public List<Sentence> findings() {
        return new CheckStore(opened)
                .findings().stream()
                        .map(one -> Sentence.plain(ofBackup(one.toString())))
                        .toList();
    }

    /** What mends a database is no way out for a backup, which is that way itself. */
    private static String ofBackup(String sentence) {
        return sentence.replace("; choose another file with --db.", "; name another file.")
                .replace("Put a backup copy in its place.", "Use another backup.")
                .replace("put a backup copy in its place.", "use another backup.")
                .replace("; put a backup copy of the database in its place.", "; use another backup.")
                .replace("; check --rebuild mends it.", "; use another backup.");
    }

    /** How many canyons it holds. */
    public int canyons() {
        return new CanyonStore(opened).count();
    }

    /**
     * Puts what it holds in the place of what an open database holds, whole or not at all.
     *
     * @throws StoreException when that cannot be written
     */
    public void into(Database database) {
        database.replaceBy(copy);
    }

    /**
     * Becomes the database where none is there.
     *
     * @throws StoreException when one is there, or it cannot be put there
     */
    public void as(Path target) {
        opened.close();
        try {
            DatabaseFile.settle(copy);
            Files.move(copy, target);
        } catch (IOException e) {
            throw new StoreException(
                    Sentence.of(
                            "The backup {0} cannot be put at {1}; check that its folder may be written.",
                            backup, target),
                    e);
        }
    }

    @Override
    public void close() {
        opened.close();
        try {
            Files.deleteIfExists(copy);
        } catch (IOException e) {
            throw new StoreException(Sentence.of("The copy {0} cannot be taken away; delete it by hand.", copy), e);
        }
    }
}
