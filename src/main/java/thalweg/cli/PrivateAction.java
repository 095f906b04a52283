package thalweg.cli;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import thalweg.fault.InputException;
import thalweg.fault.Sentence;
import thalweg.ledger.Uid;
import thalweg.logbook.CanyonRecord;
import thalweg.logbook.LocalRecord;
import thalweg.service.FindRecord;
import thalweg.service.KeepLocal;
import thalweg.service.Session;

/** Shows or writes the one private note about a thing. */
@Command(
        name = "private",
        description = {
            "Shows the private note about a canyon, a place on its line or a station; with --write writes it.",
            "Private notes stay in this database: no sheet shows them, and no export unless you ask for it."
        })
final class PrivateAction extends Action {

    @Parameters(paramLabel = "NAME-OR-ID", description = "CANYON, CANYON/STATION, or an id")
    private String where = "";

    @Option(names = "--place", paramLabel = "NUMBER", description = "the place of that number on the canyon's line")
    private @Nullable Integer place;

    @Option(names = "--write", paramLabel = "TEXT", description = "what is to stand there; empty takes the note away")
    private @Nullable String text;

    PrivateAction(Surrounds surrounds) {
        super(surrounds);
    }

    @Override
    public Integer call() {
        try (Session session = text == null ? shared().reading() : shared().writing()) {
            FindRecord find = new FindRecord(session);
            CanyonRecord canyon;
            Uid about;
            if (isStation(find)) {
                if (place != null) {
                    throw new InputException(Sentence.of("--place goes with a canyon, not with a station."));
                }
                FindRecord.StationInCanyon found = find.station(where);
                canyon = found.canyon();
                about = found.station().station().uid();
            } else {
                canyon = find.canyon(where);
                about = place == null ? canyon.canyon().uid() : place(canyon, place);
            }
            LocalRecord local = find.local(canyon.canyon().uid());
            if (text == null) {
                return show(local.noteAbout(about));
            }
            new KeepLocal(session).note(about, local.notesAbout(about), text);
            tell(
                    text.isBlank()
                            ? Sentence.of("There is no private note there now.")
                            : Sentence.of("Written; it stays in this database."));
            return ExitCodes.DONE;
        }
    }

    private boolean isStation(FindRecord find) {
        Optional<Uid> uid = Uid.parse(where);
        return where.contains("/") || (uid.isPresent() && find.byId(uid.get()).isEmpty());
    }

    private static Uid place(CanyonRecord canyon, int number) {
        if (number < 1 || number > canyon.line().size()) {
            throw new InputException(Sentence.of(
                    "There is no place {0} on the line of \"{1}\"; it has {2}.",
                    number, canyon.canyon().name(), canyon.line().size()));
        }
        return canyon.line().get(number - 1).obstacle().uid();
    }

    private Integer show(Optional<String> note) {
        if (note.isEmpty()) {
            tell(Sentence.of("There is no private note there; --write TEXT writes one."));
            return ExitCodes.NO;
        }
        print(note.get());
        return ExitCodes.DONE;
    }
}
