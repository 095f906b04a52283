package thalweg.cli;

import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import thalweg.ledger.Uid;
import thalweg.logbook.CanyonRecord;
import thalweg.service.ExportRecords;
import thalweg.service.FindRecord;
import thalweg.service.Session;

/** Shows a canyon with its line, or one station in full. */
@Command(
        name = "show",
        description = {
            "Shows a canyon and its line, or one station with its anchors, inspections and notes.",
            "A canyon is named by name, part of it, or id; a station as CANYON/STATION or by id."
        })
final class ShowAction extends Action {

    @Parameters(paramLabel = "NAME-OR-ID", description = "CANYON, CANYON/STATION, or an id")
    private String name = "";

    @Option(names = "--json", description = "print the canyon as a file of records")
    private boolean json;

    @Option(names = "--with-private", description = "also what stays in this database; left out unless asked for")
    private boolean withPrivate;

    @Option(names = "--ids", description = "print the ids of things and entries too")
    private boolean ids;

    ShowAction(Surrounds surrounds) {
        super(surrounds);
    }

    @Override
    public Integer call() {
        try (Session session = shared().reading()) {
            FindRecord find = new FindRecord(session);
            ShowText text = new ShowText(phrases(), shared().units(), session.today(), ids);
            Optional<Uid> uid = Uid.parse(name);
            boolean station = name.contains("/")
                    || (uid.isPresent() && find.byId(uid.get()).isEmpty());
            if (station) {
                FindRecord.StationInCanyon found = find.station(name);
                print(
                        json
                                ? new ExportRecords(session).json(List.of(found.canyon()), withPrivate)
                                : text.station(found.canyon(), found.station())
                                        + (withPrivate
                                                ? local(find, found.canyon()).note(found.station())
                                                : ""));
            } else {
                CanyonRecord canyon = find.canyon(name);
                LocalReport local = local(find, canyon);
                print(
                        json
                                ? new ExportRecords(session).json(List.of(canyon), withPrivate)
                                : text.canyon(canyon) + local.counts() + (withPrivate ? local.notes(canyon) : ""));
            }
        }
        return ExitCodes.DONE;
    }

    private LocalReport local(FindRecord find, CanyonRecord canyon) {
        return new LocalReport(phrases(), find.local(canyon.canyon().uid()));
    }
}
