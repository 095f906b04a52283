package thalweg.cli;

import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import thalweg.service.BackUp;
import thalweg.service.Session;

/** Copies the database. */
@Command(
        name = "backup",
        description = {
            "Writes a copy of the whole database, reads it again, and prints where it is.",
            "Keep copies on another disk: what destroys the database may take a copy beside it along."
        })
final class BackupAction extends Action {

    @Option(
            names = "--out",
            paramLabel = "PATH",
            description = "the file, which must not be there yet (default: the folder backups beside the database)")
    private @Nullable Path out;

    BackupAction(Surrounds surrounds) {
        super(surrounds);
    }

    @Override
    public Integer call() {
        try (Session session = shared().reading()) {
            BackUp backUp = new BackUp(session);
            Path target = out;
            if (target == null) {
                target = backUp.toUsual();
            } else {
                backUp.to(target);
            }
            print(target.toString());
        }
        return ExitCodes.DONE;
    }
}
