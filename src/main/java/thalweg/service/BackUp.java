package thalweg.service;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import thalweg.fault.Sentence;
import thalweg.fault.StoreException;
import thalweg.progress.Progress;

/** Writes a copy of the whole database, and reads it again before it is called one. */
public final class BackUp {

    private static final DateTimeFormatter STAMP =
            DateTimeFormatter.ofPattern("uuuu-MM-dd-HHmmss", Locale.ROOT).withZone(ZoneOffset.UTC);

    private final Session session;

    public BackUp(Session session) {
        this.session = session;
    }

    /** Where a backup goes where nobody says: a folder beside the database, a name with the time in UTC. */
    public Path usual() {
        return named("");
    }

    Path named(String why) {
        Path file = session.file().toAbsolutePath();
        String name = String.valueOf(file.getFileName());
        String stem = name.endsWith(".db") ? name.substring(0, name.length() - 3) : name;
        Path backups = file.resolveSibling("backups");
        String stamped = stem + why + "-" + STAMP.format(session.instant());
        Path free = backups.resolve(stamped + ".db");
        for (int number = 2; Files.exists(free); number++) {
            free = backups.resolve(stamped + "-" + number + ".db");
        }
        return free;
    }

    /**
     * Writes the copy.
     *
     * @param target must not be there yet
     * @throws StoreException when it cannot be written, or does not read well
     */
    public void to(Path target) {
        to(target, Progress.UNWATCHED);
    }

    /**
     * The same.
     *
     * @param progress in bytes, about
     * @throws thalweg.progress.StoppedException when it was stopped; there is no copy then
     */
    public void to(Path target, Progress progress) {
        session.backUp(target, progress);
        try (Session copy = session.beside(target)) {
            List<Sentence> findings = copy.check().fileFindings();
            if (!findings.isEmpty()) {
                throw new StoreException(Sentence.of(
                        "The backup {0} was written but does not read well: {1} Check the disk, and the database"
                                + " with check.",
                        target, findings.get(0)));
            }
        }
    }

    /**
     * Writes the copy into the usual folder, which is made where it is missing.
     *
     * @return where it is
     * @throws StoreException when it cannot be written, or does not read well
     */
    public Path toUsual() {
        return into(usual());
    }

    /** The same. */
    public Path toUsual(Progress progress) {
        return into(usual(), progress);
    }

    /** A copy before much is changed at once. */
    public Path before(String what, Progress progress) {
        return into(named("-before-" + what), progress);
    }

    Path into(Path target) {
        return into(target, Progress.UNWATCHED);
    }

    private Path into(Path target, Progress progress) {
        Path folder = target.toAbsolutePath().getParent();
        if (folder != null) {
            Folders.make(folder);
        }
        to(target, progress);
        return target;
    }
}
