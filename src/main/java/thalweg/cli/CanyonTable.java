package thalweg.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import thalweg.json.Json;
import thalweg.logbook.CanyonRow;
import thalweg.logbook.ConditionWords;
import thalweg.logbook.FoundCanyon;
import thalweg.text.Phrases;
import thalweg.units.UnitSystem;

/** Canyons that were found, as a table and as JSON. */
final class CanyonTable {

    private CanyonTable() {}

    static String of(List<FoundCanyon> canyons, Phrases phrases, UnitSystem units) {
        List<List<String>> cells = new ArrayList<>();
        cells.add(List.of("CANYON", "WHERE", "GRADES", "LONGEST", "STATIONS", "WORST", "NEWEST INSPECTION", "ID"));
        for (FoundCanyon canyon : canyons) {
            CanyonRow row = canyon.row();
            cells.add(List.of(
                    row.name() + (row.invented() ? " (invented)" : "") + (canyon.fits() ? "" : " (may fit)"),
                    row.whereabouts(),
                    String.join(" / ", present(row.french(), row.american())),
                    row.longestDrop().map(drop -> drop.print(units)).orElse(phrases.say("unknown")),
                    Integer.toString(row.stations()),
                    ConditionWords.told(row.standing(), phrases),
                    row.newestInspection().isEmpty() ? phrases.say("condition.unknown") : row.newestInspection(),
                    row.uid().text()));
        }
        return Columns.of(cells);
    }

    private static List<String> present(String... texts) {
        return Stream.of(texts).filter(text -> !text.isEmpty()).toList();
    }

    static Json json(List<FoundCanyon> canyons) {
        return new Json.Items(canyons.stream().map(CanyonTable::json).toList());
    }

    private static Json json(FoundCanyon canyon) {
        CanyonRow row = canyon.row();
        return Json.fields()
                .put("uid", row.uid().text())
                .put("name", row.name())
                .put("where", row.whereabouts())
                .put("french_grade", row.french())
                .put("american_grade", row.american())
                .putKnown("longest_drop_cm", row.longestDrop().map(drop -> Json.of(drop.inCentimetres())))
                .put("stations", row.stations())
                .putWord("worst", row.standing().worst())
                .put("gone", row.standing().gone())
                .put("never_seen", row.standing().neverSeen())
                .put("newest_inspection", row.newestInspection())
                .putIfTrue("invented", row.invented())
                .put("unknown_in", unknown(canyon))
                .done();
    }

    /** What was asked for and is unknown; empty where the canyon surely fits. */
    private static List<String> unknown(FoundCanyon canyon) {
        return Stream.concat(
                        canyon.whereUnknown() ? Stream.of("where") : Stream.empty(),
                        canyon.unknown().stream()
                                .sorted()
                                .map(measure -> measure.name().toLowerCase(Locale.ROOT)))
                .toList();
    }
}
