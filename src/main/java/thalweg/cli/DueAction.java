package thalweg.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import thalweg.due.DueCount;
import thalweg.fault.InputException;
import thalweg.fault.Sentence;
import thalweg.logbook.PartFinding;
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
        try (Session session = shared().reading()) {
            LocalDate today = session.today();
            ListDue list = new ListDue(session, settings.read(surrounds(), phrases()));
            List<DueCount> counted = new ArrayList<>();
            output.put(out -> printed(list, finding, today, out).ifPresent(counted::add));
            return told(counted.stream().findFirst());
        }
    }

    /** Prints part after part as each is found. */
    private Optional<DueCount> printed(ListDue list, PartFinding finding, LocalDate today, Consumer<String> out) {
        DueLines lines = json
                ? new DueLines.OfJson(today, out)
                : csv ? new DueLines.OfCsv(today, out) : new DueLines.OfText(today, phrases(), out);
        Optional<DueCount> count = list.each(finding, filter.filter(), within, lines::add, unknown -> {
            if (filter.unknownToo()) {
                lines.add(unknown);
            }
        });
        lines.end();
        return count;
    }

    private int told(Optional<DueCount> fits) {
        Phrases phrases = phrases();
        boolean narrowed = !words.isEmpty() || filter.asked();
        if (fits.isEmpty() && narrowed) {
            tell(phrases.say("due.nothing_fits"));
            return ExitCodes.NO;
        }
        DueCount count = fits.orElse(new DueCount(0, 0));
        if ((filter.unknownToo() ? count.all() : count.due()) == 0) {
            tell(within == 0 ? phrases.say("due.none") : phrases.say("due.none_within", days(phrases)));
        }
        if (!filter.unknownToo() && count.unknown() > 0) {
            tell(phrases.count("due.unknown_age", count.unknown()));
        }
        tell(phrases.caution("due.note"));
        return ExitCodes.DONE;
    }

    private String days(Phrases phrases) {
        return phrases.count("due.days", within);
    }
}
