package thalweg.tui.runtime;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import thalweg.fault.InputException;
import thalweg.fault.Sentence;
import thalweg.ledger.Uid;
import thalweg.logbook.CanyonRecord;
import thalweg.logbook.CanyonRow;
import thalweg.logbook.SheetNumber;
import thalweg.progress.Progress;
import thalweg.service.FindRecord;
import thalweg.service.Folders;
import thalweg.service.GiveSheet;
import thalweg.service.ListCanyons;
import thalweg.service.LoadPhrases;
import thalweg.service.MakeSheet;
import thalweg.service.ManySheets;
import thalweg.service.Session;
import thalweg.service.SheetOrder;
import thalweg.sheet.Paper;
import thalweg.tui.core.Effect;
import thalweg.tui.core.Message;
import thalweg.tui.screen.Ask;
import thalweg.tui.screen.Told;
import thalweg.units.UnitSystem;

/** Writes sheets, one or many. */
final class RunSheets {

    private final Session session;
    private final String program;
    private final Progress progress;

    /**
     * @param program version of this program
     */
    RunSheets(Session session, String program, Progress progress) {
        this.session = session;
        this.program = program;
        this.progress = progress;
    }

    /** The answer, if this is such work. */
    Optional<Message> answer(Effect effect) {
        if (effect instanceof Ask.WriteSheet sheet) {
            return Optional.of(one(sheet));
        }
        if (effect instanceof Ask.LookAtSheet look) {
            return Optional.of(look(look.sheet()));
        }
        if (effect instanceof Ask.WriteSheets sheets) {
            return Optional.of(session.aside(other -> many(other, sheets)));
        }
        return Optional.empty();
    }

    private static SheetOrder order(Ask.SheetFormat asked, UnitSystem units, Optional<Uid> station) {
        MakeSheet.Format format = switch (asked) {
            case HTML -> MakeSheet.Format.HTML;
            case TEXT -> MakeSheet.Format.TEXT;
            case MARKDOWN -> MakeSheet.Format.MARKDOWN;
            case PDF_A4, PDF_LETTER, PDF_POCKET -> MakeSheet.Format.PDF;
        };
        Paper paper = switch (asked) {
            case HTML, TEXT, MARKDOWN, PDF_A4 -> Paper.A4;
            case PDF_LETTER -> Paper.LETTER;
            case PDF_POCKET -> Paper.POCKET;
        };
        return new SheetOrder(
                format, paper, units, station, Folders.of(System.getenv()).fonts());
    }

    private CanyonRecord canyon(Ask.WriteSheet sheet) {
        return new FindRecord(session)
                .byId(sheet.canyon())
                .orElseThrow(
                        () -> new InputException(Sentence.of("This canyon is no longer in the database; go back.")));
    }

    private static SheetOrder order(Ask.WriteSheet sheet) {
        return order(sheet.format(), sheet.units(), sheet.station())
                .holding(sheet.contents())
                .since(sheet.since())
                .forTrip(sheet.trip());
    }

    private Told look(Ask.WriteSheet sheet) {
        Path target = RunAsk.target(sheet.target());
        CanyonRecord canyon = canyon(sheet);
        MakeSheet make = new MakeSheet(session, LoadPhrases.of(sheet.language()), program, sheet.settings());
        MakeSheet.Look look = make.look(canyon, order(sheet));
        return new Told.SheetLookedAt(
                look.text().lines().toList(), target.toString(), look.bytes(), Files.exists(target));
    }

    private Told one(Ask.WriteSheet sheet) {
        Path target = RunAsk.target(sheet.target());
        CanyonRecord canyon = canyon(sheet);
        Optional<SheetNumber> number = new GiveSheet(
                        session, LoadPhrases.of(sheet.language()), program, sheet.settings())
                .write(canyon, order(sheet), target, sheet.overwrite(), sheet.givenTo());
        return new Told.SheetWritten(target.toString(), number.map(SheetNumber::print));
    }

    private Told many(Session other, Ask.WriteSheets sheets) {
        List<CanyonRow> canyons = new ListCanyons(other).found(sheets.finding()).rows();
        Path folder = RunAsk.target(sheets.folder());
        MakeSheet make = new MakeSheet(other, LoadPhrases.of(sheets.language()), program, sheets.settings());
        int written = new ManySheets(other, make)
                .write(
                        canyons,
                        order(sheets.format(), sheets.units(), Optional.empty()).holding(sheets.contents()),
                        folder,
                        sheets.overwrite(),
                        progress);
        return new Told.SheetsWritten(folder.toString(), written);
    }
}
