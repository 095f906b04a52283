package thalweg.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import thalweg.fault.InputException;
import thalweg.fault.Sentence;
import thalweg.service.DemoDatabase;
import thalweg.service.Folders;
import thalweg.service.LoadPhrases;
import thalweg.service.ReadSettings;
import thalweg.service.RestoreBackup;
import thalweg.service.Session;
import thalweg.text.Language;
import thalweg.text.Phrases;
import thalweg.units.UnitSystem;

/** The options that every command understands, and the database they lead to. */
final class Shared {

    private final Surrounds surrounds;

    @Option(
            names = "--db",
            paramLabel = "FILE",
            description = "the database, instead of your own; a command that writes makes it on first use")
    private @Nullable Path db;

    @Option(names = "--demo", description = "use your copy of the invented sample data, made on first use")
    private boolean demo;

    @Option(names = "--anew", description = "with --demo: make the copy fresh; what was changed in it is lost")
    private boolean anew;

    @Option(
            names = "--units",
            paramLabel = "metric|imperial",
            description = "units of what is printed (default: ${DEFAULT-VALUE}); both are understood when typed",
            defaultValue = "metric")
    private UnitSystem units = UnitSystem.METRIC;

    @Option(
            names = "--language",
            paramLabel = "en|es|fr",
            description =
                    "language of what is printed (default: as your settings say, else as LC_ALL, LC_MESSAGES or LANG"
                            + " asks, else English); what commands and files take stays English")
    private @Nullable Language language;

    /** Read once. */
    private @Nullable Phrases phrases;

    Shared(Surrounds surrounds) {
        this.surrounds = surrounds;
    }

    Surrounds surrounds() {
        return surrounds;
    }

    UnitSystem units() {
        return units;
    }

    /**
     * The words of the program in the language that is asked for.
     *
     * @param settings the file that says which, where another than the person's own is named
     * @throws InputException when the settings cannot be used
     */
    Phrases phrases(Optional<Path> settings) {
        Phrases read = phrases;
        if (read == null) {
            read = LoadPhrases.of(ReadSettings.language(
                    Optional.ofNullable(language), settings, surrounds.folders(), surrounds.language()));
            phrases = read;
        }
        return read;
    }

    /** A session that only reads. */
    Session reading() {
        Path file = file();
        return Session.reading(file, surrounds.clock(), surrounds.user());
    }

    /** A session that changes what is there. */
    Session writing() {
        Path file = file();
        return named(Session.writing(file, surrounds.clock(), surrounds.user()));
    }

    /** A session that notes what was done where the database may be written, and only reads it where it may not. */
    Session noting() {
        Path file = file().toAbsolutePath();
        Path folder = file.getParent();
        boolean mayWrite = Files.isWritable(file) && (folder == null || Files.isWritable(folder));
        return mayWrite || !Files.exists(file) ? writing() : reading();
    }

    /** What is written is signed as the person's settings say. */
    private Session named(Session session) {
        try {
            return session.named(ReadSettings.of(Optional.empty(), surrounds.folders(), LoadPhrases.english())
                    .keeper());
        } catch (InputException e) {
            session.close();
            throw e;
        }
    }

    /** A session that makes the database where it is missing. */
    Session creating() {
        Path file = file();
        if (db == null && !demo) {
            Folders.make(surrounds.folders().data());
        }
        return named(Session.creating(file, surrounds.clock(), surrounds.user()));
    }

    /** What puts a backup in the place of the database, which need not be there. */
    RestoreBackup restoring() {
        Path file = file();
        if (db == null && !demo) {
            Folders.make(surrounds.folders().data());
        }
        return new RestoreBackup(file, surrounds.clock(), surrounds.user());
    }

    /** Whether the database is there already. */
    boolean exists() {
        return Files.exists(file());
    }

    /** A session on a database of its own in memory, for looking at what would happen to one that is not there yet. */
    Session trial() {
        return Session.inMemory(surrounds.clock(), surrounds.user());
    }

    private Path file() {
        if (db != null && (demo || anew)) {
            throw new InputException(Sentence.of("--db and --demo name two databases; choose one of them."));
        }
        if (db != null && db.toString().isBlank()) {
            throw new InputException(Sentence.of("--db needs the name of a file after it."));
        }
        if (db != null) {
            return db;
        }
        if (demo) {
            DemoDatabase.prepare(surrounds.folders(), surrounds.clock(), surrounds.user(), anew);
            return surrounds.folders().demo();
        }
        return surrounds.folders().database();
    }
}
