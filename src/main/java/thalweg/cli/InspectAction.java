package thalweg.cli;

import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import thalweg.fault.InputException;
import thalweg.fault.Sentence;
import thalweg.logbook.Condition;
import thalweg.logbook.ConditionWords;
import thalweg.logbook.Entry;
import thalweg.logbook.Inspection;
import thalweg.logbook.PartRecord;
import thalweg.logbook.Photo;
import thalweg.logbook.Round;
import thalweg.logbook.Work;
import thalweg.route.PartialDate;
import thalweg.service.AddEntries;
import thalweg.service.FindRecord;
import thalweg.service.Remarks;
import thalweg.service.Session;

/** Enters what was found on one part. */
@Command(
        name = "inspect",
        description = {
            "Adds an inspection of one part. Nothing that is there is changed.",
            "CONDITION is sound, worn, doubtful, unsafe, gone, or not-seen.",
            "Date and name are today and the keeper's, or those of the round, unless they are given."
        })
final class InspectAction extends Action {

    @Parameters(index = "0", paramLabel = "STATION", description = "CANYON/STATION, part of it, or an id")
    private String station = "";

    @Parameters(index = "1", paramLabel = "PART", description = "label of the part, part of it, or an id")
    private String part = "";

    @Parameters(index = "2", paramLabel = "CONDITION", description = "as found")
    private String condition = "";

    @Mixin
    private EntryOptions options = new EntryOptions();

    InspectAction(Surrounds surrounds) {
        super(surrounds);
    }

    @Override
    public Integer call() {
        Optional<Condition> found = EntryOptions.condition(condition);
        Optional<Condition> after = options.left().orElse(Optional.empty());
        List<Work> work = options.work().orElse(List.of());
        if (found.isEmpty() && (after.isPresent() || !work.isEmpty())) {
            throw new InputException(
                    Sentence.of("A part that was not seen has no condition as left and no work done on it."));
        }
        List<Photo> photos = options.photos();
        try (Session session = shared().writing()) {
            FindRecord.StationInCanyon place = new FindRecord(session).station(station);
            PartRecord record = FindRecord.part(place.station(), part);
            Optional<Entry<Round>> round = options.round(place.canyon()).orElse(Optional.empty());
            PartialDate date = options.visit()
                    .on()
                    .or(() -> round.map(entry -> entry.content().on()))
                    .orElse(PartialDate.of(session.today()));
            String name = options.visit()
                    .by()
                    .or(() -> round.map(entry -> entry.content().by()))
                    .orElse(session.keeper());
            Remarks remarks = Remarks.before(session, record.part().uid());
            new AddEntries(session)
                    .inspections(List.of(new Inspection(
                            record.part().uid(),
                            date,
                            name,
                            found,
                            after,
                            options.visit()
                                    .water()
                                    .orElse(round.flatMap(
                                            entry -> entry.content().water())),
                            work,
                            options.visit().note().orElse(""),
                            round.map(Entry::uid),
                            photos)));
            tell(Sentence.of(
                    "Added: {0}/{1}, {2}, {3}: {4}.",
                    place.canyon().canyon().name(),
                    place.station().station().name(),
                    record.part().label(),
                    date.print(),
                    found.isPresent()
                            ? ConditionWords.told(after.isPresent() ? after : found, phrases())
                            : phrases().say("condition.not_seen")));
            remark(remarks);
        }
        return ExitCodes.DONE;
    }
}
