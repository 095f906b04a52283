package thalweg.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import thalweg.fault.InputException;
import thalweg.fault.Sentence;
import thalweg.json.Json;
import thalweg.json.JsonText;
import thalweg.logbook.ConditionWords;
import thalweg.logbook.ListedStation;
import thalweg.logbook.StationOrder;
import thalweg.service.ListStations;
import thalweg.service.Session;
import thalweg.text.Phrases;
import thalweg.units.Length;
import thalweg.units.UnitSystem;

/** Lists the stations of all canyons. */
@Command(
        name = "stations",
        description = {
            "Lists the stations of all canyons, or those that every word fits (station, canyon, region, country). First come"
                    + " those that nobody has ever looked at, then those that nobody has looked at for longest; a month or a"
                    + " year counts as its last day."
        })
final class StationsAction extends Action {

    @Parameters(paramLabel = "WORDS", arity = "0..*", description = "beginnings of words, without regard to accents")
    private List<String> words = new ArrayList<>();

    @Option(
            names = "--sort",
            paramLabel = "ORDER",
            defaultValue = "looked",
            description =
                    "looked: longest not looked at first (as it is without this); condition: worst first; name; canyon")
    private StationOrder order = StationOrder.LOOKED;

    @Option(names = "--json", description = "print JSON")
    private boolean json;

    @Option(names = "--csv", description = "print CSV (RFC 4180)")
    private boolean csv;

    @Mixin
    private final SettingsOption settings = new SettingsOption();

    @Mixin
    private final Output output;

    StationsAction(Surrounds surrounds) {
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
        List<ListedStation> found;
        try (Session session = shared().reading()) {
            found = new ListStations(session)
                    .all(String.join(" ", words), order, settings.read(surrounds(), phrases()));
        }
        Phrases phrases = phrases();
        if (json) {
            output.put(JsonText.indented(new Json.Items(
                    found.stream().<Json>map(StationsAction::json).toList())));
        } else if (csv) {
            output.put(ListStations.csv(found));
        } else if (!found.isEmpty()) {
            output.put(table(found, phrases, shared().units()));
        }
        if (found.isEmpty()) {
            tell(phrases.say(words.isEmpty() ? "stations.none" : "stations.no_station_fits"));
        }
        return found.isEmpty() && !words.isEmpty() ? ExitCodes.NO : ExitCodes.DONE;
    }

    private static String table(List<ListedStation> stations, Phrases phrases, UnitSystem units) {
        List<List<String>> cells = new ArrayList<>();
        cells.add(List.of("STATION", "CANYON", "PLACE", "WORST CONDITION", "DUE", "OLDEST LOOK", "ID"));
        stations.forEach(station -> cells.add(List.of(
                station.name(),
                station.canyon().name() + (station.canyon().invented() ? " (invented)" : ""),
                place(station, phrases, units),
                station.parts() == 0
                        ? phrases.say("station.no_parts_short")
                        : ConditionWords.told(station.standing(), phrases),
                station.due().map(due -> due == 0 ? "" : Integer.toString(due)).orElse(""),
                seen(station, phrases),
                station.uid().text())));
        return Columns.of(cells);
    }

    private static String seen(ListedStation station, Phrases phrases) {
        int never = station.standing().neverSeen();
        return station.oldestLook()
                .map(date ->
                        never == 0 ? date.print() : date.print() + ", " + phrases.say("stations.some_never", never))
                .orElse(phrases.say("stations.never"));
    }

    private static String place(ListedStation station, Phrases phrases, UnitSystem units) {
        return station.place()
                + station.kind()
                        .map(kind -> " " + Words.word(phrases, "obstacle", kind))
                        .orElse("")
                + station.height().map(height -> ", " + height.print(units)).orElse("");
    }

    private static Json json(ListedStation station) {
        return Json.fields()
                .put("uid", station.uid().text())
                .put("name", station.name())
                .put("canyon", station.canyon().name())
                .put("canyon_uid", station.canyon().uid().text())
                .put("place", station.place())
                .putKnown(
                        "place_kind",
                        station.kind().map(kind -> Json.of(kind.name().toLowerCase(Locale.ROOT))))
                .putKnown(
                        "height_cm", station.height().map(Length::inCentimetres).map(Json::of))
                .put("parts", station.parts())
                .putKnown("due", station.due().map(due -> Json.of((long) due)))
                .putWord("worst_condition", station.standing().worst())
                .put("gone", station.standing().gone())
                .put("never_inspected", station.standing().neverSeen())
                .putKnown("oldest_look", station.oldestLook().map(date -> Json.of(date.print())))
                .putIfTrue("invented", station.canyon().invented())
                .done();
    }
}
