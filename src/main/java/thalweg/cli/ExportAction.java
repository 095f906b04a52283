package thalweg.cli;

import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import thalweg.fault.InputException;
import thalweg.fault.Sentence;
import thalweg.logbook.CanyonRecord;
import thalweg.logbook.Finding;
import thalweg.logbook.FoundCanyons;
import thalweg.service.ExportRecords;
import thalweg.service.FindRecord;
import thalweg.service.ListCanyons;
import thalweg.service.Session;

/** Writes records as a file for another database. */
@Command(
        name = "export",
        description =
                "Writes canyons with everything in them as a file that `import` takes in; all where none is named.")
final class ExportAction extends Action {

    /** The formats there are. */
    enum Format {
        JSON
    }

    @Parameters(paramLabel = "CANYON", arity = "0..*", description = "names, parts of names, or ids")
    private List<String> canyons = new ArrayList<>();

    @Option(names = "--as", paramLabel = "FORMAT", description = "json (default)", defaultValue = "json")
    private Format format = Format.JSON;

    @Option(
            names = "--with-private",
            description = "also trips, private notes and to whom sheets were given; left out unless asked for")
    private boolean withPrivate;

    @Option(
            names = "--matching",
            paramLabel = "WORDS",
            description = "the canyons that `list WORDS` shows, instead of named ones")
    private String matching = "";

    @Mixin
    private final FilterOptions filter = new FilterOptions();

    @Mixin
    private final Output output;

    ExportAction(Surrounds surrounds) {
        super(surrounds);
        output = new Output(surrounds);
    }

    @Override
    public Integer call() {
        boolean searched = !matching.isBlank() || filter.asked();
        if (searched && !canyons.isEmpty()) {
            throw new InputException(Sentence.of("Canyons are named or searched for; do one of the two."));
        }
        String text;
        try (Session session = shared().reading()) {
            FindRecord find = new FindRecord(session);
            List<CanyonRecord> records = searched
                    ? found(session, find)
                    : canyons.stream().map(find::canyon).toList();
            if (searched && records.isEmpty()) {
                tell(Sentence.of("No canyon fits; nothing was written."));
                return ExitCodes.NO;
            }
            text = switch (format) {
                case JSON -> new ExportRecords(session).json(records, withPrivate);
            };
        }
        output.put(text);
        return ExitCodes.DONE;
    }

    private List<CanyonRecord> found(Session session, FindRecord find) {
        FoundCanyons found = new ListCanyons(session).found(new Finding(matching, filter.filter()));
        if (found.unknown() > 0 && !filter.filter().unknownToo()) {
            tell(FilterOptions.unknown(found.unknown()));
        }
        return found.rows().stream()
                .flatMap(row -> find.byId(row.uid()).stream())
                .toList();
    }
}
