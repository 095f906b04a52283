package thalweg.cli;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import thalweg.fault.InputException;
import thalweg.fault.Sentence;
import thalweg.ledger.Uid;
import thalweg.logbook.CanyonRecord;
import thalweg.logbook.SheetNumber;
import thalweg.service.FindRecord;
import thalweg.service.FindStation;
import thalweg.service.GiveSheet;
import thalweg.service.MakeSheet;
import thalweg.service.Session;
import thalweg.service.SheetOrder;
import thalweg.sheet.Paper;
import thalweg.sheet.SheetContents;
import thalweg.sheet.Stretch;

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
            description = "html, pdf, text or markdown (default: by the ending of --out, else html)")
    private MakeSheet.@Nullable Format format;

    @Option(
            names = "--paper",
            paramLabel = "PAPER",
            description = "of a PDF: a4 (default), letter, or pocket, small pages of what is needed in the canyon,"
                    + " to print on one side of A4 and to fold")
    private @Nullable Paper paper;

    @Option(
            names = "--station",
            paramLabel = "STATION",
            description = "the card of one station: its name, part of it, the number of its place, or its id")
    private @Nullable String station;

    @Option(
            names = "--given-to",
            paramLabel = "NAME",
            description = "note to whom it is given, beside the number that the sheet bears; needs --out")
    private String givenTo = "";

    @Option(
            names = "--part",
            paramLabel = "FROM..TO",
            description = "only a part of the canyon, by the numbers of its first and last place")
    private @Nullable String part;

    @Option(names = "--private-notes", description = "with your private notes, marked as such; else they are left out")
    private boolean privateNotes;

    @Option(
            names = "--since",
            paramLabel = "NUMBER",
            description = "begin with what changed in the records since that sheet of this canyon, as 12 or 12-4f9ac1")
    private @Nullable String since;

    @Option(
            names = "--trip",
            paramLabel = "ID",
            description = "for a trip of the records: when to be where, until when to go on, what to carry")
    private @Nullable String trip;

    @Mixin
    private final ContentsOptions contents = new ContentsOptions();

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
        MakeSheet.Format chosen = chosen();
        if (paper != null && chosen != MakeSheet.Format.PDF) {
            throw new InputException(
                    Sentence.of("--paper is for PDF; leave it out, or ask for the sheet with --as pdf."));
        }
        if (chosen == MakeSheet.Format.PDF && output.file().isEmpty()) {
            throw new InputException(
                    Sentence.of("A PDF is no text for a terminal; name the file to write with --out PATH."));
        }
        if (output.file().isPresent()) {
            return write(chosen, output.file().get());
        }
        if (!givenTo.isBlank()) {
            throw new InputException(
                    Sentence.of("--given-to needs --out PATH: a sheet is noted together with the name of its file."));
        }
        return print(chosen);
    }

    /** The one that was named, else the one that fits what else was named. */
    private MakeSheet.Format chosen() {
        if (format != null) {
            return format;
        }
        if (paper != null) {
            return MakeSheet.Format.PDF;
        }
        String name = output.file().map(Path::toString).orElse("").toLowerCase(Locale.ROOT);
        return Arrays.stream(MakeSheet.Format.values())
                .filter(one -> name.endsWith("." + one.ending()))
                .findFirst()
                .orElse(MakeSheet.Format.HTML);
    }

    /** What is printed bears no number: nobody knows whether it is kept. */
    private Integer print(MakeSheet.Format chosen) {
        byte[] made;
        try (Session session = shared().reading()) {
            CanyonRecord record = new FindRecord(session).canyon(canyon);
            made = new MakeSheet(session, phrases(), surrounds().version(), settings.read(surrounds(), phrases()))
                    .of(record, order(record, chosen));
        }
        output.put(made);
        return ExitCodes.DONE;
    }

    private SheetOrder order(CanyonRecord record, MakeSheet.Format chosen) {
        SheetContents shown = contents.chosen().of(Optional.ofNullable(part).map(Stretch::parse));
        return new SheetOrder(
                chosen,
                paper == null ? Paper.A4 : paper,
                shared().units(),
                Optional.ofNullable(station)
                        .map(words ->
                                new FindStation(record).named(words).station().uid()),
                surrounds().folders().fonts(),
                privateNotes ? shown.withPrivateNotes() : shown,
                Optional.ofNullable(since).map(SheetNumber::parse),
                Optional.ofNullable(trip).map(SheetAction::id));
    }

    private static Uid id(String typed) {
        return Uid.parse(typed)
                .orElseThrow(() -> new InputException(
                        Sentence.of("\"{0}\" is no id of a trip; `trips` lists them with their ids.", typed)));
    }

    private Integer write(MakeSheet.Format chosen, Path file) {
        try (Session session = givenTo.isBlank() ? shared().noting() : shared().writing()) {
            CanyonRecord record = new FindRecord(session).canyon(canyon);
            Optional<SheetNumber> number = new GiveSheet(
                            session, phrases(), surrounds().version(), settings.read(surrounds(), phrases()))
                    .write(record, order(record, chosen), file, output.overwrites(), givenTo);
            output.written(file);
            tell(number.map(one -> Sentence.of("Noted as sheet {0}.", one.print()))
                    .orElseGet(() -> Sentence.of("The database can only be read, so that the sheet bears no number.")));
        }
        return ExitCodes.DONE;
    }
}
