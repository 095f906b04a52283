package thalweg.tui.runtime;

import java.nio.file.Path;
import java.util.Optional;
import thalweg.fault.InputException;
import thalweg.fault.Sentence;
import thalweg.progress.Progress;
import thalweg.service.BackUp;
import thalweg.service.ImportRecords;
import thalweg.service.ImportTable;
import thalweg.service.ReadFile;
import thalweg.service.ReadWaypoints;
import thalweg.service.Session;
import thalweg.tui.core.Effect;
import thalweg.tui.core.Message;
import thalweg.tui.screen.Ask;
import thalweg.tui.screen.Told;

/**
 * Does work that may take long, beside everything else: what is written goes over a connection of its own, so that the
 * screens can read meanwhile.
 */
final class RunLong {

    private final Session session;
    private final String program;
    private final Progress progress;

    /**
     * @param program version of this program
     */
    RunLong(Session session, String program, Progress progress) {
        this.session = session;
        this.program = program;
        this.progress = progress;
    }

    /** The answer, if this is such work. */
    Optional<Message> answer(Effect effect) {
        if (effect instanceof Ask.ReadRecords read) {
            return Optional.of(read(read.path()));
        }
        if (effect instanceof Ask.PreviewTable table) {
            ImportTable.Preview preview = new ImportTable(session).preview(table.table(), table.columns(), progress);
            return Optional.of(new Told.TableUnderstood(table.name(), preview.plan(), preview.first()));
        }
        if (effect instanceof Ask.TakeIn take) {
            return Optional.of(session.aside(other -> taken(other, take)));
        }
        if (effect instanceof Ask.BackUp) {
            return Optional.of(session.aside(other ->
                    new Told.BackedUp(new BackUp(other).toUsual(progress).toString())));
        }
        return effect instanceof Ask.WriteCanyons
                ? new RunFinding(session, progress).answer(effect)
                : new RunSheets(session, program, progress).answer(effect);
    }

    private Told read(String typed) {
        Path path = ReadFile.typed(typed, System.getenv());
        byte[] bytes = ReadFile.bytes(path);
        if (ReadWaypoints.looksLikeOne(bytes)) {
            throw new InputException(Sentence.of(
                    "{0} is a file of waypoints (GPX or GeoJSON), not of records; in the list of canyons g begins a"
                            + " canyon from it, and in a canyon g places them on its line.",
                    path));
        }
        if (ImportTable.looksLikeOne(bytes)) {
            return table(path.toString(), bytes);
        }
        ImportRecords.Preview preview = new ImportRecords(session).preview(path.toString(), bytes, progress);
        return new Told.RecordsRead(path.toString(), preview.findings(), preview.plan());
    }

    private static Told table(String name, byte[] bytes) {
        ImportTable.Read read = ImportTable.read(bytes, Optional.empty());
        String text = ImportTable.text(bytes);
        if (text.isEmpty() || read.table().headings().isEmpty()) {
            ImportRecords.Preview unread = ImportTable.unread(read);
            return new Told.RecordsRead(name, unread.findings(), unread.plan());
        }
        return new Told.TableRead(
                name, text, read.table(), read.findings(), ImportTable.kind(read.table()), ImportTable.allWords());
    }

    private Told taken(Session other, Ask.TakeIn take) {
        Path kept = new BackUp(other).before("import", progress);
        new ImportRecords(other).accept(take.plan(), progress);
        return new Told.TakenIn(kept.toString());
    }
}
