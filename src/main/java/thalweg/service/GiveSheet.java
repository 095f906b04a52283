package thalweg.service;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import thalweg.body.Entered;
import thalweg.exchange.json.RecordsHash;
import thalweg.fault.AppException;
import thalweg.fault.InputException;
import thalweg.fault.Sentence;
import thalweg.fault.StoreException;
import thalweg.ledger.LedgerPlace;
import thalweg.logbook.CanyonRecord;
import thalweg.logbook.SheetGiven;
import thalweg.logbook.SheetNumber;
import thalweg.route.PartialDate;
import thalweg.settings.Settings;
import thalweg.text.Phrases;

/** Writes a sheet to a file under a number, and notes what it was made from, and to whom it was given where somebody says so. */
public final class GiveSheet {

    private final Session session;
    private final MakeSheet make;

    /** By the standard figures. */
    public GiveSheet(Session session, Phrases phrases, String program) {
        this(session, phrases, program, new Settings(List.of()));
    }

    /**
     * @param session in which it is noted
     * @param phrases the language of the sheet
     * @param program version of this program
     * @param settings whose figures say what is due
     */
    public GiveSheet(Session session, Phrases phrases, String program, Settings settings) {
        this.session = session;
        this.make = new MakeSheet(session, phrases, program, settings);
    }

    /**
     * Writes the file, then the note. The sheet bears the number under which it is noted, and not to whom it was given; it
     * has none where the database may only be read.
     *
     * @param canyon it is about; it is read again, so that the note says what the sheet was made from
     * @param order which sheet
     * @param target file to write
     * @param overwrite whether a file that is there may be replaced
     * @param to whom it is given; blank where nobody said
     * @return the number; empty where nothing was noted
     * @throws InputException when the file cannot be written, and nothing was noted either
     * @throws AppException when the file was written but not noted, which the sentence says
     */
    public Optional<SheetNumber> write(
            CanyonRecord canyon, SheetOrder order, Path target, boolean overwrite, String to) {
        if (session.isReadOnly()) {
            if (!to.isBlank()) {
                throw new InputException(
                        Sentence.of("The database is open for reading only, so nobody can note to whom a sheet is"
                                + " given; leave that empty to write the sheet alone."));
            }
            WriteFile.whole(target, make.of(canyon, order), overwrite);
            return Optional.empty();
        }
        LedgerPlace ledger = session.earlier().place();
        CanyonRecord now = session.records()
                .canyon(canyon.canyon().uid())
                .orElseThrow(
                        () -> new InputException(Sentence.of("This canyon is no longer in the database; go back.")));
        SheetGiven given =
                noted(now, session.today(), target, to, session.local().lastSheetNumber() + 1, ledger);
        WriteFile.whole(target, make.numbered(now, order, given.mark()), overwrite);
        note(given, target);
        return Optional.of(given.mark());
    }

    /** What is noted of a sheet. */
    static SheetGiven noted(
            CanyonRecord canyon, LocalDate today, Path target, String to, long number, LedgerPlace ledger) {
        Path file = Objects.requireNonNullElse(target.getFileName(), target);
        return Entered.of(new SheetGiven(
                canyon.canyon().uid(),
                PartialDate.of(today),
                to,
                number,
                file.toString().isBlank() ? "?" : file.toString(),
                RecordsHash.of(canyon),
                Optional.of(ledger)));
    }

    /** Notes what was written; failing, it says which of both happened. */
    void note(SheetGiven given, Path target) {
        try {
            new AddEntries(session).sheetGiven(given);
        } catch (AppException e) {
            Sentence saying = given.to().isEmpty()
                    ? Sentence.of(
                            "The sheet was written to {0}, but its number was not noted: {1} Write the sheet again.",
                            target, e.saying())
                    : Sentence.of(
                            "The sheet was written to {0}, but that it was given to {1} was not noted: {2} Write the"
                                    + " sheet again to note it.",
                            target, given.to(), e.saying());
            throw e instanceof StoreException ? new StoreException(saying, e) : new InputException(saying, e);
        }
    }
}
