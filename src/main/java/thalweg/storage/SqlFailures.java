package thalweg.storage;

import java.nio.file.Path;
import java.sql.SQLException;
import org.sqlite.SQLiteErrorCode;
import org.sqlite.SQLiteException;
import thalweg.fault.Sentence;
import thalweg.fault.StoreException;

/** Turns what SQLite says into a sentence that names the file and the mend. */
final class SqlFailures {

    private static final int BUSY = 5;
    private static final int LOCKED = 6;
    private static final int READ_ONLY = 8;
    private static final int IO = 10;
    private static final int CORRUPT = 11;
    private static final int FULL = 13;
    private static final int CANNOT_OPEN = 14;
    private static final int NOT_A_DATABASE = 26;

    private SqlFailures() {}

    static StoreException explain(Path file, SQLException failure) {
        // The plain error code leaves out what tells an index from the file.
        if (failure instanceof SQLiteException known && known.getResultCode() == SQLiteErrorCode.SQLITE_CORRUPT_VTAB) {
            return new StoreException(
                    Sentence.of(
                            "The index of words in the database {0} is damaged; the records are not. Let check"
                                    + " --rebuild mend it.",
                            file),
                    failure);
        }
        Sentence saying = switch (failure.getErrorCode() & 0xFF) {
            case BUSY, LOCKED ->
                Sentence.of(
                        "The database {0} is being written by another program and did not become free;"
                                + " try again when that is done.",
                        file);
            case READ_ONLY ->
                Sentence.of(
                        "The database {0} cannot be written; nothing was changed. Check the permissions of"
                                + " the file and its folder.",
                        file);
            case CORRUPT, NOT_A_DATABASE ->
                Sentence.of("The database {0} is damaged; nothing was changed. Put a backup copy in its place.", file);
            case FULL ->
                Sentence.of(
                        "The disk that holds {0} is full; nothing was changed. Free some space and try again.", file);
            case CANNOT_OPEN ->
                Sentence.of(
                        "The database {0} cannot be opened; check that the folder is there and may be written.", file);
            case IO ->
                Sentence.of(
                        "The disk that holds {0} failed while it was read or written; nothing was changed."
                                + " Check the disk, then try again.",
                        file);
            default ->
                Sentence.of("The database {0} refused the work; nothing was changed. The log has the details.", file);
        };
        return new StoreException(saying, failure);
    }
}
