package thalweg.cli;

import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import thalweg.fault.Sentence;
import thalweg.service.RestoreBackup;

/** Puts a backup in the place of the database. */
@Command(
        name = "restore",
        description = {
            "Looks at a backup; with --accept puts it in the place of the database.",
            "What was there before is kept in a file of its own, which is printed.",
            "Only restore backups of your own: a database that somebody sent can hold more than records.",
            "What others send goes in with import."
        })
final class RestoreAction extends Action {

    @Parameters(paramLabel = "BACKUP", description = "a file that backup wrote")
    private Path backup = Path.of("");

    @Option(names = "--accept", description = "do it; without this, only tell what the backup holds")
    private boolean accept;

    RestoreAction(Surrounds surrounds) {
        super(surrounds);
    }

    @Override
    public Integer call() {
        RestoreBackup restore = shared().restoring();
        if (!accept) {
            RestoreBackup.Preview preview = restore.preview(backup);
            preview.findings().forEach(finding -> print(phrases().say(finding)));
            if (!preview.findings().isEmpty()) {
                tell(Sentence.of("This backup is not sound and would not be put in place."));
                return ExitCodes.NO;
            }
            print(
                    preview.canyons() == 1
                            ? Sentence.of("The backup is sound and holds 1 canyon.")
                            : Sentence.of("The backup is sound and holds {0} canyons.", preview.canyons()));
            tell(Sentence.of("Nothing was changed; --accept puts it in the place of the database."));
            return ExitCodes.DONE;
        }
        Optional<Path> kept = restore.from(backup);
        tell(Sentence.of("The backup is in place."));
        kept.ifPresent(file -> print(Sentence.of("What was there before is kept in {0}", file)));
        return ExitCodes.DONE;
    }
}
