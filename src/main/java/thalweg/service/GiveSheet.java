package thalweg.service;

import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import thalweg.body.Entered;
import thalweg.exchange.json.RecordsHash;
import thalweg.fault.AppException;
import thalweg.fault.InputException;
import thalweg.fault.Sentence;
import thalweg.fault.StoreException;
import thalweg.logbook.CanyonRecord;
import thalweg.logbook.SheetGiven;
import thalweg.route.PartialDate;
import thalweg.settings.Settings;
import thalweg.text.Phrases;

/** Writes a sheet to a file, and notes to whom it was given where somebody says so. */
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
     * Writes the file, then the note. The sheet bears the number under which it is noted, and not to whom it was given.
     *
     * @param order which sheet
     * @param target file to write
     * @param overwrite whether a file that is there may be replaced
     * @param to whom it is given; blank where nothing is to be noted
     * @return the number; empty where nothing was noted
     * @throws InputException when the file cannot be written, and nothing was noted either
     * @throws AppException when the file was written but not noted, which the sentence says
     */
    public Optional<Long> write(CanyonRecord canyon, SheetOrder order, Path target, boolean overwrite, String to) {
        if (to.isBlank()) {
            WriteFile.whole(target, make.of(canyon, order), overwrite);
            return Optional.empty();
        }
        if (session.isReadOnly()) {
            throw new InputException(
                    Sentence.of("The database is open for reading only, so nobody can note to whom a sheet is given;"
                            + " leave that empty to write the sheet alone."));
        }
        Path file = Objects.requireNonNullElse(target.getFileName(), target);
        SheetGiven given = Entered.of(new SheetGiven(
                canyon.canyon().uid(),
                PartialDate.of(session.today()),
                to,
                session.local().lastSheetNumber() + 1,
                file.toString().isBlank() ? "?" : file.toString(),
                RecordsHash.of(canyon)));
        WriteFile.whole(target, make.numbered(canyon, order, given.number()), overwrite);
        note(given, target);
        return Optional.of(given.number());
    }

    /** Notes what was written; failing, it says which of both happened. */
    void note(SheetGiven given, Path target) {
        try {
            new AddEntries(session).sheetGiven(given);
        } catch (AppException e) {
            Sentence saying = Sentence.of(
                    "The sheet was written to {0}, but that it was given to {1} was not noted: {2} Write the sheet"
                            + " again to note it.",
                    target, given.to(), e.saying());
            throw e instanceof StoreException ? new StoreException(saying, e) : new InputException(saying, e);
        }
    }
}
