package thalweg.cli;

import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import thalweg.logbook.CanyonRecord;
import thalweg.service.ExportRecords;
import thalweg.service.FindRecord;
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

    @Mixin
    private final Output output;

    ExportAction(Surrounds surrounds) {
        super(surrounds);
        output = new Output(surrounds);
    }

    @Override
    public Integer call() {
        String text;
        try (Session session = shared().reading()) {
            FindRecord find = new FindRecord(session);
            List<CanyonRecord> records = canyons.stream().map(find::canyon).toList();
            text = switch (format) {
                case JSON -> new ExportRecords(session).json(records, withPrivate);
            };
        }
        output.put(text);
        return ExitCodes.DONE;
    }
}
