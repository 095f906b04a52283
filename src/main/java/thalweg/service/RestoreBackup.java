package thalweg.service;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import thalweg.fault.Sentence;
import thalweg.fault.StoreException;
import thalweg.storage.BackupFile;

/** Puts a backup in the place of a database. What was there before is kept beside it. */
public final class RestoreBackup {

    private final Path target;
    private final Clock clock;
    private final String user;

    /**
     * @param target the database, which need not be there
     * @param user name of the account
     */
    public RestoreBackup(Path target, Clock clock, String user) {
        this.target = target;
        this.clock = clock;
        this.user = user;
    }

    /**
     * What a backup is like.
     *
     * @param canyons how many it holds
     * @param findings what is wrong with it, one sentence each; empty where all is well
     */
    public record Preview(int canyons, List<Sentence> findings) {}

    /**
     * Looks at a backup; nothing is changed.
     *
     * @throws StoreException when it is missing, foreign, newer or damaged
     */
    public Preview preview(Path backup) {
        try (BackupFile copy = BackupFile.open(backup, target)) {
            List<Sentence> findings = copy.findings();
            return new Preview(findings.isEmpty() ? copy.canyons() : 0, findings);
        }
    }

    /**
     * Puts the backup in the place of the database, whole or not at all.
     *
     * @return where what was there before is kept; empty where there was nothing
     * @throws StoreException when the backup is not sound or the database cannot be written; nothing is changed then
     */
    public Optional<Path> from(Path backup) {
        try (BackupFile copy = BackupFile.open(backup, target)) {
            List<Sentence> findings = copy.findings();
            if (!findings.isEmpty()) {
                Sentence first = Sentence.of(
                        "The backup {0} is not sound, and nothing was changed: {1}", backup, findings.get(0));
                throw new StoreException(
                        findings.size() == 1 ? first : Sentence.of("{0} {1} more.", first, findings.size() - 1));
            }
            if (!Files.exists(target)) {
                copy.as(target);
                return Optional.empty();
            }
            return Optional.of(replaced(copy));
        }
    }

    private Path replaced(BackupFile copy) {
        try (Session session = writing()) {
            BackUp backUp = new BackUp(session);
            Path kept = backUp.into(backUp.named("-before-restore"));
            session.replaceBy(copy);
            return kept;
        }
    }

    /** What cannot be opened cannot be kept as a backup, and is not moved away unasked: it may be somebody's other file. */
    private Session writing() {
        try {
            return Session.writing(target, clock, user);
        } catch (StoreException e) {
            throw new StoreException(
                    Sentence.of(
                            "{0} To put the backup there all the same, first move that file away by hand.", e.saying()),
                    e);
        }
    }
}
