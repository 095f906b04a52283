package thalweg.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import thalweg.fault.Sentence;
import thalweg.json.Json;
import thalweg.json.JsonText;
import thalweg.ledger.Uid;
import thalweg.logbook.TripInCanyon;
import thalweg.service.FindRecord;
import thalweg.service.ListTrips;
import thalweg.service.Session;

/** Lists trips. */
@Command(
        name = "trips",
        description = {
            "Lists trips to one canyon or to all: what is planned first, then what was done.",
            "Trips stay in this database; trip enters them."
        })
final class TripsAction extends Action {

    @Parameters(paramLabel = "CANYON", arity = "0..1", description = "name, part of it, or id")
    private @Nullable String canyon;

    @Option(names = "--json", description = "print JSON, people and weights too")
    private boolean json;

    TripsAction(Surrounds surrounds) {
        super(surrounds);
    }

    @Override
    public Integer call() {
        List<TripInCanyon> trips;
        try (Session session = shared().reading()) {
            Optional<Uid> of = canyon == null
                    ? Optional.empty()
                    : Optional.of(
                            new FindRecord(session).canyon(canyon).canyon().uid());
            trips = new ListTrips(session).of(of);
        }
        if (json) {
            print(JsonText.indented(
                    new Json.Items(trips.stream().map(TripReport::json).toList())));
        } else if (trips.isEmpty()) {
            tell(Sentence.of("There are no trips yet; trip CANYON --on DATE enters one."));
        } else {
            print(table(trips));
        }
        return ExitCodes.DONE;
    }

    private String table(List<TripInCanyon> trips) {
        TripReport report = new TripReport(phrases(), shared().units());
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("DAY", "STATE", "TRIP", "CANYON", "WHERE", "PEOPLE", "ID"));
        trips.forEach(trip -> rows.add(report.row(trip)));
        return Columns.of(rows);
    }
}
