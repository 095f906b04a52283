package thalweg.cli;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import thalweg.fault.InputException;
import thalweg.logbook.Condition;
import thalweg.logbook.Inspection;
import thalweg.logbook.PartRecord;
import thalweg.logbook.WaterLevel;
import thalweg.logbook.Work;
import thalweg.route.PartialDate;
import thalweg.service.AddEntries;
import thalweg.service.FindRecord;
import thalweg.service.Session;
import thalweg.text.Clean;

/** Enters what was found on one part. */
@Command(
        name = "inspect",
        description = {
            "Adds an inspection of one part. Nothing that is there is changed.",
            "CONDITION is sound, worn, doubtful, unsafe, gone, or not-seen."
        })
final class InspectAction extends Action {

    private static final int LONGEST_NAME = 120;
    private static final int LONGEST_NOTE = 4000;

    @Parameters(index = "0", paramLabel = "STATION", description = "CANYON/STATION, part of it, or an id")
    private String station = "";

    @Parameters(index = "1", paramLabel = "PART", description = "label of the part, part of it, or an id")
    private String part = "";

    @Parameters(index = "2", paramLabel = "CONDITION", description = "as found")
    private String condition = "";

    @Option(names = "--left", paramLabel = "CONDITION", description = "as left, where work changed it")
    private @Nullable String left;

    @Option(names = "--on", paramLabel = "DATE", description = "2026-06-14, 2026-06 or 2026 (default: today)")
    private @Nullable String on;

    @Option(names = "--by", paramLabel = "NAME", description = "who looked (default: the keeper)")
    private @Nullable String by;

    @Option(names = "--note", paramLabel = "TEXT", description = "what else was seen")
    private String note = "";

    @Option(names = "--water", paramLabel = "LEVEL", description = "${COMPLETION-CANDIDATES}")
    private @Nullable WaterLevel water;

    @Option(names = "--work", paramLabel = "WORK", split = ",", description = "${COMPLETION-CANDIDATES}")
    private List<Work> work = new ArrayList<>();

    InspectAction(Surrounds surrounds) {
        super(surrounds);
    }

    @Override
    public Integer call() {
        Optional<Condition> found = condition(condition);
        Optional<Condition> after = left == null ? Optional.empty() : condition(left);
        if (found.isEmpty() && (after.isPresent() || !work.isEmpty())) {
            throw new InputException("A part that was not seen has no condition as left and no work done on it.");
        }
        try (Session session = shared().writing()) {
            FindRecord.StationInCanyon place = new FindRecord(session).station(station);
            PartRecord record = FindRecord.part(place.station(), part);
            PartialDate date = on == null ? PartialDate.of(session.today()) : PartialDate.parse(on);
            String name = Clean.line(by == null ? session.keeper() : by, LONGEST_NAME);
            new AddEntries(session)
                    .inspections(List.of(new Inspection(
                            record.part().uid(),
                            date,
                            name,
                            found,
                            after,
                            Optional.ofNullable(water),
                            work,
                            Clean.lines(note, LONGEST_NOTE))));
            tell("Added: " + place.canyon().canyon().name() + "/"
                    + place.station().station().name() + ", "
                    + record.part().label() + ", " + date.print() + ": "
                    + (found.isPresent()
                            ? Words.condition(surrounds().phrases(), after.isPresent() ? after : found)
                            : surrounds().phrases().say("condition.not_seen"))
                    + ".");
        }
        return ExitCodes.DONE;
    }

    private static Optional<Condition> condition(String word) {
        String plain = word.strip().toLowerCase(Locale.ROOT).replace('_', '-').replace(' ', '-');
        if (plain.equals("not-seen")) {
            return Optional.empty();
        }
        Optional<Condition> match = Arrays.stream(Condition.values())
                .filter(one -> one.name().toLowerCase(Locale.ROOT).equals(plain))
                .findFirst();
        if (match.isEmpty()) {
            throw new InputException("The condition \"" + word
                    + "\" is not known; it is one of sound, worn, doubtful, unsafe, gone, or not-seen.");
        }
        return match;
    }
}
