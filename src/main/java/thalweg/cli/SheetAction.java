package thalweg.cli;

import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import thalweg.fault.InputException;
import thalweg.fault.Sentence;
import thalweg.logbook.CanyonRecord;
import thalweg.service.FindRecord;
import thalweg.service.GiveSheet;
import thalweg.service.MakeSheet;
import thalweg.service.Session;

/** Makes a sheet to hand out. */
@Command(
        name = "sheet",
        description = "Makes the sheet of a canyon: line, anchors, conditions with their age, notes and analyses.")
final class SheetAction extends Action {

    @Parameters(paramLabel = "CANYON", description = "name, part of it, or id")
    private String canyon = "";

    @Option(
            names = "--as",
            paramLabel = "FORMAT",
            description = "html (default), text or markdown",
            defaultValue = "html")
    private MakeSheet.Format format = MakeSheet.Format.HTML;

    @Option(
            names = "--given-to",
            paramLabel = "NAME",
            description = "note to whom it is given, under a number that the sheet bears; needs --out")
    private String givenTo = "";

    @Mixin
    private final SettingsOption settings = new SettingsOption();

    @Mixin
    private final Output output;

    SheetAction(Surrounds surrounds) {
        super(surrounds);
        output = new Output(surrounds);
    }

    @Override
    Optional<Path> settingsFile() {
        return settings.file();
    }

    @Override
    public Integer call() {
        if (!givenTo.isBlank()) {
            return give();
        }
        String text;
        try (Session session = shared().reading()) {
            CanyonRecord record = new FindRecord(session).canyon(canyon);
            text = new MakeSheet(session, phrases(), surrounds().version(), settings.read(surrounds(), phrases()))
                    .of(record, format, shared().units());
        }
        output.put(text);
        return ExitCodes.DONE;
    }

    private Integer give() {
        Path file = output.file()
                .orElseThrow(() -> new InputException(Sentence.of(
                        "--given-to needs --out PATH: a sheet is noted together with the name of its file.")));
        try (Session session = shared().writing()) {
            CanyonRecord record = new FindRecord(session).canyon(canyon);
            Optional<Long> number = new GiveSheet(
                            session, phrases(), surrounds().version(), settings.read(surrounds(), phrases()))
                    .write(record, format, shared().units(), file, output.overwrites(), givenTo);
            output.written(file);
            number.ifPresent(one -> tell(Sentence.of("Noted as sheet {0}.", one)));
        }
        return ExitCodes.DONE;
    }
}
