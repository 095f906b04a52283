package thalweg.cli;

import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import thalweg.logbook.CanyonRecord;
import thalweg.logbook.Round;
import thalweg.route.PartialDate;
import thalweg.service.AddEntries;
import thalweg.service.FindRecord;
import thalweg.service.Session;

/** Enters a round. */
@Command(
        name = "round",
        description = {
            "Enters a round: one visit to a canyon on which anchors are looked at.",
            "`inspect --round latest` then adds what was found; `show CANYON` lists its rounds.",
            "Date and name are today and the keeper's unless they are given."
        })
final class RoundAction extends Action {

    @Parameters(paramLabel = "CANYON", description = "name, part of it, or id")
    private String canyon = "";

    @Mixin
    private VisitOptions visit = new VisitOptions();

    RoundAction(Surrounds surrounds) {
        super(surrounds);
    }

    @Override
    public Integer call() {
        try (Session session = shared().writing()) {
            CanyonRecord record = new FindRecord(session).canyon(canyon);
            new AddEntries(session)
                    .round(new Round(
                            record.canyon().uid(),
                            visit.on().orElse(PartialDate.of(session.today())),
                            visit.by().orElse(session.keeper()),
                            visit.water().orElse(Optional.empty()),
                            visit.note().orElse("")));
            tell(new Amended(phrases(), shared().units()).latest(session));
        }
        return ExitCodes.DONE;
    }
}
