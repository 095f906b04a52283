package thalweg.storage;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import thalweg.fault.Sentence;
import thalweg.fault.StoreException;

/**
 * What the first bytes of a database file say, read before SQLite touches it, so that a foreign file is never changed.
 *
 * @param applicationId whose file it is
 * @param version of the tables in it
 * @see "SQLite, Database File Format, 1.3 The Database Header"
 */
record FileHeader(int applicationId, int version) {

    private static final byte[] MAGIC = "SQLite format 3\0".getBytes(StandardCharsets.US_ASCII);
    private static final int LENGTH = 100;
    private static final int PAGE_SIZE_AT = 16;
    private static final int VERSION_AT = 60;
    private static final int APPLICATION_AT = 68;

    /**
     * Reads the header of a file that is there. Where a journal lies beside it, a write was interrupted and its end may
     * be ragged until SQLite has mended it.
     *
     * @throws StoreException when it is no database or cannot be read
     */
    static FileHeader of(Path file) {
        byte[] bytes = new byte[LENGTH];
        int read;
        long size;
        try (InputStream in = Files.newInputStream(file)) {
            read = in.readNBytes(bytes, 0, LENGTH);
            size = Files.size(file);
        } catch (IOException e) {
            throw new StoreException(Sentence.of("The database {0} cannot be read; check its permissions.", file), e);
        }
        if (read < LENGTH || !Arrays.equals(Arrays.copyOf(bytes, MAGIC.length), MAGIC)) {
            throw new StoreException(
                    Sentence.of("{0} is not a Thalweg database; choose another file with --db.", file));
        }
        ByteBuffer header = ByteBuffer.wrap(bytes);
        int pageSize = header.getShort(PAGE_SIZE_AT) & 0xFFFF;
        int bytesPerPage = pageSize == 1 ? 65_536 : pageSize;
        boolean interrupted = Files.exists(file.resolveSibling(file.getFileName() + "-journal"));
        boolean whole = bytesPerPage >= 512 && (size % bytesPerPage == 0 || interrupted);
        if (!whole || header.getInt(VERSION_AT) < 0) {
            throw new StoreException(Sentence.of(
                    "The database {0} is damaged: its beginning or its end is not right. Put a backup copy in"
                            + " its place.",
                    file));
        }
        return new FileHeader(header.getInt(APPLICATION_AT), header.getInt(VERSION_AT));
    }
}
