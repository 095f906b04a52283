package thalweg.cli;

import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import thalweg.exchange.map.Located;
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
        description = {
            "Writes canyons with everything in them as a file that `import` takes in; all where none is named.",
            "gpx and geojson hold where things are, for maps; canyons-csv, stations-csv, parts-csv and inspections-csv are"
                    + " tables that `import` takes in again (`stations --csv`, `parts --csv` and `due --csv` write lists)."
        })
final class ExportAction extends Action {

    /** The formats there are. */
    enum Format {
        JSON("json"),
        GPX("gpx"),
        GEOJSON("geojson"),
        CANYONS_CSV("canyons-csv"),
        STATIONS_CSV("stations-csv"),
        PARTS_CSV("parts-csv"),
        INSPECTIONS_CSV("inspections-csv");

        private final String word;

        Format(String word) {
            this.word = word;
        }

        /** As it is typed. */
        @Override
        public String toString() {
            return word;
        }
    }

    /** Names of things that nobody knows where they are, before the rest is a number. */
    private static final int MOST_NAMED = 5;

    @Parameters(paramLabel = "CANYON", arity = "0..*", description = "names, parts of names, or ids")
    private List<String> canyons = new ArrayList<>();

    @Option(
            names = "--as",
            paramLabel = "FORMAT",
            description = "${COMPLETION-CANDIDATES} (default: json)",
            defaultValue = "json")
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
        if (withPrivate && format != Format.JSON) {
            throw new InputException(
                    Sentence.of("What is private goes into json alone; leave out --with-private for {0}.", format));
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
            text = written(new ExportRecords(session), records);
        }
        output.put(text);
        return ExitCodes.DONE;
    }

    private String written(ExportRecords export, List<CanyonRecord> named) {
        if (format == Format.JSON) {
            return export.json(named, withPrivate);
        }
        List<CanyonRecord> records = export.orAll(named);
        return switch (format) {
            case GPX -> {
                tellWhatIsNowhere(ExportRecords.located(records));
                yield export.gpx(records, phrases(), shared().units());
            }
            case GEOJSON -> ExportRecords.geoJson(records, phrases(), shared().units());
            case CANYONS_CSV -> ExportRecords.canyonsCsv(records);
            case STATIONS_CSV -> ExportRecords.stationsCsv(records);
            case PARTS_CSV -> ExportRecords.partsCsv(records);
            case INSPECTIONS_CSV -> ExportRecords.inspectionsCsv(records);
            case JSON -> throw new IllegalStateException("written already");
        };
    }

    private void tellWhatIsNowhere(Located located) {
        List<String> nowhere = located.nowhere();
        tell(Sentence.of(
                "GPX holds where things are and no more: parts, inspections, notes and analyses are not" + " in it."));
        if (!nowhere.isEmpty()) {
            String names = String.join(", ", nowhere.subList(0, Math.min(MOST_NAMED, nowhere.size())));
            int points = located.points() + nowhere.size();
            tell(
                    nowhere.size() > MOST_NAMED
                            ? Sentence.of(
                                    "Of {0} canyons, places and stations {1} are not in it, because nobody entered"
                                            + " where they are: {2} and others.",
                                    points, nowhere.size(), names)
                            : Sentence.of(
                                    "Of {0} canyons, places and stations {1} are not in it, because nobody entered"
                                            + " where they are: {2}.",
                                    points, nowhere.size(), names));
        }
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
