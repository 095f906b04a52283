package thalweg.service;

import java.nio.file.Path;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import thalweg.fault.StoreException;

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
        return file.resolveSibling("backups").resolve(stem + why + "-" + STAMP.format(session.instant()) + ".db");
    }

    /**
     * Writes the copy.
     *
     * @param target must not be there yet
     * @throws StoreException when it cannot be written, or does not read well
     */
    public void to(Path target) {
        session.backUp(target);
        try (Session copy = session.beside(target)) {
            List<String> findings = copy.check().fileFindings();
            if (!findings.isEmpty()) {
                throw new StoreException("The backup " + target + " was written but does not read well: "
                        + findings.get(0) + " Check the disk, and the database with check.");
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

    Path into(Path target) {
        Path folder = target.toAbsolutePath().getParent();
        if (folder != null) {
            Folders.make(folder);
        }
        to(target);
        return target;
    }
}
