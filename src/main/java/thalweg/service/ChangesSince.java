package thalweg.service;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import thalweg.amend.Since;
import thalweg.amend.SinceWords;
import thalweg.exchange.json.RecordsHash;
import thalweg.fault.InputException;
import thalweg.fault.Sentence;
import thalweg.ledger.LedgerPlace;
import thalweg.logbook.CanyonRecord;
import thalweg.logbook.Entry;
import thalweg.logbook.LineRecord;
import thalweg.logbook.SheetGiven;
import thalweg.logbook.SheetNumber;
import thalweg.sheet.LeaveOut;
import thalweg.sheet.SheetChanges;
import thalweg.sheet.Tone;
import thalweg.sheet.Words;
import thalweg.storage.LocalStore;
import thalweg.text.Phrases;

/** Tells what the records of a canyon say otherwise than an earlier sheet of it, from the ledger as it was then. */
final class ChangesSince {

    private final Session session;
    private final Phrases phrases;

    ChangesSince(Session session, Phrases phrases) {
        this.session = session;
        this.phrases = phrases;
    }

    /**
     * The changes, without what the order leaves out.
     *
     * @throws InputException when the sheet is not known here, or what it was made from is not
     */
    SheetChanges of(CanyonRecord now, SheetOrder order, SheetNumber earlier) {
        SheetGiven sheet = sheet(now, earlier);
        CanyonRecord then = then(sheet);
        LeaveOut leaveOut = new LeaveOut(order.contents());
        CanyonRecord shown = leaveOut.from(now);
        Since since = Since.between(about(leaveOut.earlier(then, now), order, shown), about(shown, order, shown));
        List<SheetChanges.Group> groups = new ArrayList<>();
        Map<SinceWords.Kind, List<SinceWords.Line>> told =
                SinceWords.of(since, order.contents().history(), phrases, order.units());
        told.forEach((kind, lines) -> groups.add(new SheetChanges.Group(
                phrases.say("since.kind." + kind.name().toLowerCase(Locale.ROOT)),
                lines.stream().map(line -> words(kind, line)).toList())));
        return new SheetChanges(sheet.mark().print(), sheet.on(), groups);
    }

    private static Words words(SinceWords.Kind kind, SinceWords.Line line) {
        Tone usual = kind == SinceWords.Kind.HAZARDS ? Tone.CAUTION : Tone.PLAIN;
        return Words.of(line.text(), line.condition().map(Tone::of).orElse(usual));
    }

    /** For the card of a station, that station alone, and nothing of the canyon around it. */
    private static CanyonRecord about(CanyonRecord record, SheetOrder order, CanyonRecord now) {
        if (order.station().isEmpty()) {
            return record;
        }
        List<LineRecord> line = record.line().stream()
                .map(place -> place.alone(order.station().get()))
                .filter(place -> !place.stations().isEmpty())
                .toList();
        return new CanyonRecord(now.canyon(), line);
    }

    private SheetGiven sheet(CanyonRecord now, SheetNumber earlier) {
        List<LocalStore.SheetsOf> all = session.local().sheets(Optional.empty());
        List<SheetGiven> numbered = all.stream()
                .flatMap(of -> of.sheets().stream())
                .map(Entry::content)
                .filter(one -> one.number() == earlier.number())
                .toList();
        List<SheetGiven> fitting =
                numbered.stream().filter(one -> earlier.fits(one.mark())).toList();
        if (numbered.isEmpty()) {
            throw new InputException(Sentence.of(
                    "This database has written no sheet {0}; `given` lists those it has. What a sheet of another"
                            + " database was made from cannot be known here.",
                    earlier.print()));
        }
        if (fitting.isEmpty()) {
            throw new InputException(Sentence.of(
                    "The sheet with this number is {0} here; {1} is of another database, and what that was made from"
                            + " cannot be known here.",
                    numbered.get(0).mark().print(), earlier.print()));
        }
        List<SheetGiven> here = fitting.stream()
                .filter(one -> one.canyon().equals(now.canyon().uid()))
                .toList();
        if (here.isEmpty()) {
            throw new InputException(Sentence.of(
                    "Sheet {0} is about another canyon than {1}; `given` says about which.",
                    fitting.get(0).mark().print(), now.canyon().name()));
        }
        return here.get(here.size() - 1);
    }

    /** The records that the sheet was made from; their hash proves that they are. */
    private CanyonRecord then(SheetGiven sheet) {
        LedgerPlace place = sheet.ledger()
                .orElseThrow(() -> new InputException(Sentence.of(
                        "Sheet {0} was noted by an earlier version of this program, which did not keep what it was made"
                                + " from; what changed since cannot be told.",
                        sheet.mark().print())));
        return session.earlier()
                .canyon(sheet.canyon(), place)
                .filter(then -> RecordsHash.of(then).equals(sheet.records()))
                .orElseThrow(() -> new InputException(Sentence.of(
                        "What sheet {0} was made from is not in this database: the sheet is of another one, or the"
                                + " database was put back to an earlier state; what changed since cannot be told.",
                        sheet.mark().print())));
    }
}
