package thalweg.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import thalweg.fault.InputException;
import thalweg.fault.Sentence;
import thalweg.logbook.CanyonRow;
import thalweg.logbook.Finding;
import thalweg.progress.Progress;
import thalweg.service.ListCanyons;
import thalweg.service.MakeSheet;
import thalweg.service.ManySheets;
import thalweg.service.Session;
import thalweg.service.SheetOrder;
import thalweg.sheet.Paper;

/** Makes the sheets of many canyons. */
@Command(
        name = "sheets",
        description = {
            "Makes the sheets of all canyons, or of those that words and options fit, in one folder.",
            "All of them are written, or none."
        })
final class SheetsAction extends Action {

    @Parameters(paramLabel = "WORDS", arity = "0..*", description = "beginnings of words, without regard to accents")
    private List<String> words = new ArrayList<>();

    @Option(names = "--out", paramLabel = "FOLDER", required = true, description = "the folder, which must be there")
    private Path folder = Path.of("");

    @Option(names = "--overwrite", description = "say that files that are there may be replaced")
    private boolean overwrite;

    @Option(names = "--as", paramLabel = "FORMAT", description = "html (default), pdf, text or markdown")
    private MakeSheet.Format format = MakeSheet.Format.HTML;

    @Option(names = "--paper", paramLabel = "PAPER", description = "of PDFs: a4 (default), letter or pocket")
    private Paper paper = Paper.A4;

    @Mixin
    private final ContentsOptions contents = new ContentsOptions();

    @Mixin
    private final FilterOptions filter = new FilterOptions();

    @Mixin
    private final SettingsOption settings = new SettingsOption();

    SheetsAction(Surrounds surrounds) {
        super(surrounds);
    }

    @Override
    Optional<Path> settingsFile() {
        return settings.file();
    }

    @Override
    public Integer call() {
        if (paper != Paper.A4 && format != MakeSheet.Format.PDF) {
            throw new InputException(
                    Sentence.of("--paper is for PDF; leave it out, or ask for the sheet with --as pdf."));
        }
        try (Session session = shared().noting()) {
            List<CanyonRow> canyons = new ListCanyons(session)
                    .found(new Finding(String.join(" ", words), filter.filter()))
                    .rows();
            if (canyons.isEmpty()) {
                tell(Sentence.of("No canyon fits; nothing was written."));
                return ExitCodes.NO;
            }
            MakeSheet make =
                    new MakeSheet(session, phrases(), surrounds().version(), settings.read(surrounds(), phrases()));
            SheetOrder order = new SheetOrder(
                            format,
                            paper,
                            shared().units(),
                            Optional.empty(),
                            surrounds().folders().fonts())
                    .holding(contents.chosen());
            int written = new ManySheets(session, make).write(canyons, order, folder, overwrite, Progress.UNWATCHED);
            tell(phrases().count("sheets_form.done", written, folder));
        }
        return ExitCodes.DONE;
    }
}
