package thalweg.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import thalweg.due.Due;
import thalweg.due.DuePart;
import thalweg.due.DueWords;
import thalweg.due.FoundDue;
import thalweg.fault.InputException;
import thalweg.fault.Sentence;
import thalweg.json.Json;
import thalweg.json.JsonText;
import thalweg.logbook.ConditionWords;
import thalweg.logbook.PartFinding;
import thalweg.logbook.PartRow;
import thalweg.route.PartialDate;
import thalweg.service.ListDue;
import thalweg.service.Session;
import thalweg.text.Phrases;

/** Lists what is due. */
@Command(
        name = "due",
        description = {
            "Lists the parts that are to be mended, examined or replaced, the most urgent first: all, or those that every"
                    + " word fits (canyon, station, label, hardware).",
            "After how long a part is due can be set; see src/docs/settings.md."
        })
final class DueAction extends Action {

    private static final int MOST_DAYS = 36_525;

    @Parameters(paramLabel = "WORDS", arity = "0..*", description = "beginnings of words, without regard to accents")
    private List<String> words = new ArrayList<>();

    @Option(names = "--within", paramLabel = "DAYS", description = "also what is due within so many days")
    private int within;

    @Option(names = "--json", description = "print JSON")
    private boolean json;

    @Option(names = "--csv", description = "print CSV (RFC 4180)")
    private boolean csv;

    @Mixin
    private final FilterOptions filter = new FilterOptions();

    @Mixin
    private final SettingsOption settings = new SettingsOption();

    @Mixin
    private final Output output;

    DueAction(Surrounds surrounds) {
        super(surrounds);
        output = new Output(surrounds);
    }

    @Override
    Optional<Path> settingsFile() {
        return settings.file();
    }

    @Override
    public Integer call() {
        if (json && csv) {
            throw new InputException(Sentence.of("--json and --csv are two formats; choose one of them."));
        }
        if (within < 0 || within > MOST_DAYS) {
            throw new InputException(Sentence.of("--within is {0}; it must be 0 to {1} days.", within, MOST_DAYS));
        }
        PartFinding finding = new PartFinding(String.join(" ", words), Optional.empty(), "", "", "", "", "");
        FoundDue found;
        LocalDate today;
        try (Session session = shared().reading()) {
            today = session.today();
            found = new ListDue(session, settings.read(surrounds(), phrases()))
                    .within(finding, filter.filter(), within);
        }
        List<DuePart> listed = new ArrayList<>(found.parts());
        if (filter.unknownToo()) {
            listed.addAll(found.unknownAge());
        }
        Phrases phrases = phrases();
        if (json) {
            output.put(JsonText.indented(new Json.Items(
                    listed.stream().<Json>map(part -> json(part, today)).toList())));
        } else if (csv) {
            output.put(ListDue.csv(listed, today));
        } else if (!listed.isEmpty()) {
            output.put(table(listed, today, phrases));
        }
        boolean narrowed = !words.isEmpty() || filter.asked();
        if (!found.fits() && narrowed) {
            tell(phrases.say("due.nothing_fits"));
            return ExitCodes.NO;
        }
        if (listed.isEmpty()) {
            tell(within == 0 ? phrases.say("due.none") : phrases.say("due.none_within", days(phrases)));
        }
        if (!filter.unknownToo() && !found.unknownAge().isEmpty()) {
            tell(phrases.count("due.unknown_age", found.unknownAge().size()));
        }
        tell(phrases.caution("due.note"));
        return ExitCodes.DONE;
    }

    private String days(Phrases phrases) {
        return phrases.count("due.days", within);
    }

    private static String table(List<DuePart> parts, LocalDate today, Phrases phrases) {
        List<List<String>> cells = new ArrayList<>();
        cells.add(List.of("CANYON", "STATION", "PART", "CONDITION", "SEEN", "DUE", "ID"));
        parts.forEach(part -> cells.add(cells(part, today, phrases)));
        return Columns.of(cells);
    }

    private static List<String> cells(DuePart part, LocalDate today, Phrases phrases) {
        PartRow row = part.row();
        return List.of(
                row.canyonName() + (row.invented() ? " (invented)" : ""),
                row.stationName(),
                row.part().label(),
                ConditionWords.told(row.state().condition(), phrases),
                row.state().seenOn().map(PartialDate::print).orElse(""),
                DueWords.what(part.first(), today, phrases),
                row.part().uid().text());
    }

    private static Json json(DuePart part, LocalDate today) {
        return PartTable.json(part.row())
                .with(
                        "due",
                        new Json.Items(part.dues().stream()
                                .<Json>map(due -> json(due, today))
                                .toList()));
    }

    private static Json json(Due due, LocalDate today) {
        return Json.fields()
                .put("task", due.task().name().toLowerCase(Locale.ROOT))
                .put("reason", due.reason().name().toLowerCase(Locale.ROOT))
                .putKnown("on", due.day().map(day -> Json.of(day.toString())))
                .putKnown("days_over", due.daysOver(today).map(Json::of))
                .done();
    }
}
