package thalweg.storage;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.Optional;
import org.sqlite.ProgressHandler;
import thalweg.progress.Progress;
import thalweg.progress.StoppedException;

/** One long statement of SQLite that is watched while it runs, and that a person can stop. */
final class Watched implements AutoCloseable {

    /** Steps of SQLite's machine between two looks, about a thousandth of a second. */
    private static final int STEPS = 10_000;

    private final Connection connection;
    private Optional<StoppedException> stopped = Optional.empty();

    private Watched(Connection connection) {
        this.connection = connection;
    }

    /**
     * Watches a copy as it grows.
     *
     * @param copy the file
     * @param all how large it may become [bytes]
     */
    static Watched copying(Connection connection, Path copy, long all, Progress progress) throws SQLException {
        progress.at(0, all);
        Watched watched = new Watched(connection);
        ProgressHandler.setHandler(connection, STEPS, new ProgressHandler() {
            @Override
            protected int progress() {
                return watched.goesOn(progress, copy, all) ? 0 : 1;
            }
        });
        return watched;
    }

    private boolean goesOn(Progress progress, Path copy, long all) {
        try {
            progress.at(Math.min(all, size(copy)), all);
            return true;
        } catch (StoppedException e) {
            stopped = Optional.of(e);
            return false;
        }
    }

    private static long size(Path copy) {
        try {
            return Files.size(copy);
        } catch (IOException notThere) {
            return 0;
        }
    }

    /** What stopped it, if a person did. */
    Optional<StoppedException> stopped() {
        return stopped;
    }

    @Override
    public void close() throws SQLException {
        ProgressHandler.clearHandler(connection);
    }
}
