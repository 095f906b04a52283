package thalweg.cli;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import thalweg.logbook.CanyonRecord;
import thalweg.service.FindRecord;
import thalweg.service.MakeSheet;
import thalweg.service.Session;

/** Makes a sheet to hand out. */
@Command(
        name = "sheet",
        description = "Makes the sheet of a canyon: line, anchors, conditions with their age, notes and analyses.")
final class SheetAction extends Action {

    @Parameters(paramLabel = "CANYON", description = "name, part of it, or id")
    private String canyon = "";

    @Option(names = "--as", paramLabel = "FORMAT", description = "html (default) or text", defaultValue = "html")
    private MakeSheet.Format format = MakeSheet.Format.HTML;

    @Mixin
    private final Output output;

    SheetAction(Surrounds surrounds) {
        super(surrounds);
        output = new Output(surrounds);
    }

    @Override
    public Integer call() {
        String text;
        try (Session session = shared().reading()) {
            CanyonRecord record = new FindRecord(session).canyon(canyon);
            text = new MakeSheet(session, surrounds().phrases(), surrounds().version())
                    .of(record, format, shared().units());
        }
        output.put(text);
        return ExitCodes.DONE;
    }
}
