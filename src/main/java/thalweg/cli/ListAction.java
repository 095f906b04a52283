package thalweg.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import thalweg.fault.InputException;
import thalweg.fault.Sentence;
import thalweg.json.JsonText;
import thalweg.logbook.Finding;
import thalweg.logbook.FoundCanyons;
import thalweg.logbook.PartFinding;
import thalweg.logbook.PartRow;
import thalweg.logbook.StationRow;
import thalweg.service.FindParts;
import thalweg.service.ListCanyons;
import thalweg.service.Session;

/** Lists canyons, or parts of anchors. */
@Command(
        name = "list",
        description = {
            "Lists canyons, all or those that every word fits: names, region, country.",
            "With --parts it lists parts of anchors by their hardware, as a recall asks for."
        })
final class ListAction extends Action {

    private static final int MOST_STATIONS = 12;

    @Parameters(paramLabel = "WORDS", arity = "0..*", description = "beginnings of words, without regard to accents")
    private List<String> words = new ArrayList<>();

    @Option(names = "--json", description = "print JSON")
    private boolean json;

    @Option(names = "--csv", description = "with --parts: print CSV (RFC 4180)")
    private boolean csv;

    @Mixin
    private final FilterOptions filter = new FilterOptions();

    @Mixin
    private final PartOptions parts = new PartOptions();

    @Mixin
    private final Output output;

    ListAction(Surrounds surrounds) {
        super(surrounds);
        output = new Output(surrounds);
    }

    @Override
    public Integer call() {
        if (parts.forgotten()) {
            throw new InputException(
                    Sentence.of("Only parts have a kind, material, size, standard, maker or batch; add --parts."));
        }
        if (csv && (json || !parts.asked())) {
            throw new InputException(
                    json
                            ? Sentence.of("--json and --csv are two formats; choose one of them.")
                            : Sentence.of("--csv is there for parts; add --parts, or write canyons with --json or"
                                    + " `export`."));
        }
        if (parts.asked() && filter.asksOfCanyons()) {
            throw new InputException(Sentence.of(
                    "--parts lists parts of all canyons; name canyon, region or country among the words instead."));
        }
        return parts.asked() ? parts() : canyons();
    }

    private int canyons() {
        Finding finding = new Finding(String.join(" ", words), filter.filter());
        FoundCanyons found;
        try (Session session = shared().reading()) {
            found = new ListCanyons(session).found(finding);
        }
        boolean none = found.canyons().isEmpty();
        boolean asked = !words.isEmpty() || filter.asked();
        if (json) {
            output.put(JsonText.indented(CanyonTable.json(found.canyons())));
        } else if (!none) {
            output.put(CanyonTable.of(found.canyons(), phrases(), shared().units()));
        } else {
            tell(
                    asked
                            ? Sentence.of("No canyon fits.")
                            : Sentence.of("There are no canyons yet; `import FILE` takes some in."));
        }
        tellUnknown(found, finding);
        tellStations(found);
        return none && asked ? ExitCodes.NO : ExitCodes.DONE;
    }

    private void tellUnknown(FoundCanyons found, Finding finding) {
        if (found.unknown() > 0 && !finding.filter().unknownToo()) {
            tell(FilterOptions.unknown(found.unknown()));
        }
    }

    private void tellStations(FoundCanyons found) {
        List<StationRow> stations = found.stations();
        if (!stations.isEmpty()) {
            boolean more = found.moreStations() || stations.size() > MOST_STATIONS;
            String shown = stations.stream()
                    .limit(MOST_STATIONS)
                    .map(row -> row.canyonName() + "/" + row.stationName())
                    .collect(Collectors.joining(", "));
            tell(
                    more
                            ? Sentence.of("Stations with these words (`show` prints one): {0} and more.", shown)
                            : Sentence.of("Stations with these words (`show` prints one): {0}.", shown));
        }
    }

    private int parts() {
        PartFinding finding = parts.finding(String.join(" ", words));
        List<PartRow> rows;
        List<FindParts.MayFit> mayFit;
        try (Session session = shared().reading()) {
            rows = new FindParts(session).all(finding);
            mayFit = new FindParts(session).mayFit(finding);
        }
        boolean too = filter.unknownToo();
        List<FindParts.MayFit> listed = too ? mayFit : List.of();
        if (json) {
            output.put(JsonText.indented(PartTable.json(rows, listed)));
        } else if (csv) {
            output.put(too ? FindParts.csv(rows, listed) : FindParts.csv(rows));
        } else if (!rows.isEmpty() || !listed.isEmpty()) {
            output.put(PartTable.of(rows, listed, phrases()));
        } else {
            tell(
                    finding.equals(PartFinding.ALL)
                            ? Sentence.of("There are no parts yet.")
                            : Sentence.of("No part fits."));
        }
        if (!mayFit.isEmpty()) {
            tell(unrecorded(mayFit.size(), finding, too));
        }
        if (rows.stream().anyMatch(row -> row.replacedSince().isPresent())) {
            tell(phrases().say("parts.replaced_note"));
        }
        return rows.isEmpty() && listed.isEmpty() && !finding.equals(PartFinding.ALL) ? ExitCodes.NO : ExitCodes.DONE;
    }

    /** A recall goes by what was written down; of parts where nobody did, somebody has to go and look. */
    private static Sentence unrecorded(int parts, PartFinding finding, boolean listed) {
        String asked = PartTable.words(finding.asked(), " or ");
        if (parts == 1) {
            return listed
                    ? Sentence.of(
                            "1 part fits in all else and may be among them, but its {0} was not recorded; listed last.",
                            asked)
                    : Sentence.of(
                            "1 part fits in all else and may be among them, but its {0} was not recorded;"
                                    + " --unknown-too lists it too.",
                            asked);
        }
        return listed
                ? Sentence.of(
                        "{0} parts fit in all else and may be among them, but their {1} was not recorded; listed last.",
                        parts, asked)
                : Sentence.of(
                        "{0} parts fit in all else and may be among them, but their {1} was not recorded;"
                                + " --unknown-too lists them too.",
                        parts, asked);
    }
}
