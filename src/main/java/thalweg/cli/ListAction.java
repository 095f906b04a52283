package thalweg.cli;

import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import thalweg.json.Json;
import thalweg.json.JsonText;
import thalweg.logbook.CanyonRow;
import thalweg.service.ListCanyons;
import thalweg.service.Session;
import thalweg.text.Phrases;
import thalweg.units.UnitSystem;

/** Lists canyons. */
@Command(name = "list", description = "Lists canyons, all or those that every word fits: names, region, country.")
final class ListAction extends Action {

    @Parameters(paramLabel = "WORDS", arity = "0..*", description = "beginnings of words, without regard to accents")
    private List<String> words = new ArrayList<>();

    @Option(names = "--json", description = "print JSON")
    private boolean json;

    ListAction(Surrounds surrounds) {
        super(surrounds);
    }

    @Override
    public Integer call() {
        List<CanyonRow> rows;
        try (Session session = shared().reading()) {
            rows = new ListCanyons(session).matching(String.join(" ", words));
        }
        if (json) {
            print(JsonText.indented(
                    new Json.Items(rows.stream().map(ListAction::json).toList())));
        } else if (rows.isEmpty()) {
            tell(words.isEmpty() ? "There are no canyons yet; `import FILE` takes some in." : "No canyon fits.");
        } else {
            print(table(rows, surrounds().phrases(), shared().units()));
        }
        return rows.isEmpty() && !words.isEmpty() ? ExitCodes.NO : ExitCodes.DONE;
    }

    private static String table(List<CanyonRow> rows, Phrases phrases, UnitSystem units) {
        List<List<String>> cells = new ArrayList<>();
        cells.add(List.of("CANYON", "WHERE", "GRADES", "LONGEST", "STATIONS", "WORST", "NEWEST INSPECTION", "ID"));
        for (CanyonRow row : rows) {
            cells.add(List.of(
                    row.name() + (row.invented() ? " (invented)" : ""),
                    row.whereabouts(),
                    String.join(" / ", present(row.french(), row.american())),
                    row.longestDrop().map(drop -> drop.print(units)).orElse(phrases.say("unknown")),
                    Integer.toString(row.stations()),
                    Words.condition(phrases, row.worst()),
                    row.newestInspection().isEmpty() ? phrases.say("condition.unknown") : row.newestInspection(),
                    row.uid().text()));
        }
        return Columns.of(cells);
    }

    private static List<String> present(String... texts) {
        return List.of(texts).stream().filter(text -> !text.isEmpty()).toList();
    }

    private static Json json(CanyonRow row) {
        return Json.fields()
                .put("uid", row.uid().text())
                .put("name", row.name())
                .put("where", row.whereabouts())
                .put("french_grade", row.french())
                .put("american_grade", row.american())
                .putKnown("longest_drop_cm", row.longestDrop().map(drop -> Json.of(drop.inCentimetres())))
                .put("stations", row.stations())
                .putWord("worst", row.worst())
                .put("never_seen", row.neverSeen())
                .put("newest_inspection", row.newestInspection())
                .putIfTrue("invented", row.invented())
                .done();
    }
}
