package thalweg.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import thalweg.json.Json;
import thalweg.logbook.ConditionWords;
import thalweg.logbook.PartRow;
import thalweg.route.Part;
import thalweg.route.PartialDate;
import thalweg.text.Phrases;

/** Parts that were found, as a table and as JSON. */
final class PartTable {

    private PartTable() {}

    static String of(List<PartRow> rows, Phrases phrases) {
        List<List<String>> cells = new ArrayList<>();
        cells.add(List.of("CANYON", "STATION", "PART", "HARDWARE", "CONDITION", "SEEN", "PLACED", "ID"));
        for (PartRow row : rows) {
            cells.add(List.of(
                    row.canyonName() + (row.invented() ? " (invented)" : ""),
                    row.stationName(),
                    row.part().label(),
                    hardware(row, phrases),
                    ConditionWords.told(row.state().condition(), phrases)
                            + (row.state().contradictory() ? ", " + phrases.say("condition.contradictory") : ""),
                    row.state().seenOn().map(PartialDate::print).orElse(""),
                    placed(row, phrases),
                    row.part().uid().text()));
        }
        return Columns.of(cells);
    }

    private static String hardware(PartRow row, Phrases phrases) {
        Part.Hardware hardware = row.part().hardware();
        return Stream.of(
                        Words.word(phrases, "part", row.part().kind()),
                        hardware.material(),
                        hardware.size(),
                        hardware.standard(),
                        hardware.maker(),
                        hardware.batch())
                .filter(text -> !text.isEmpty())
                .collect(Collectors.joining(", "));
    }

    private static String placed(PartRow row, Phrases phrases) {
        return row.part().placed().map(PartialDate::print).orElse(phrases.say("unknown"))
                + row.replacedSince()
                        .map(date -> ", " + phrases.say("parts.replaced", date.print()))
                        .orElse("");
    }

    static Json json(List<PartRow> rows) {
        return new Json.Items(rows.stream().map(PartTable::json).toList());
    }

    private static Json json(PartRow row) {
        Part.Hardware hardware = row.part().hardware();
        return Json.fields()
                .put("uid", row.part().uid().text())
                .put("label", row.part().label())
                .put("canyon", row.canyonName())
                .put("canyon_uid", row.canyon().text())
                .put("station", row.stationName())
                .put("station_uid", row.station().text())
                .putWord("kind", Optional.of(row.part().kind()))
                .put("material", hardware.material())
                .put("size", hardware.size())
                .put("standard", hardware.standard())
                .put("maker", hardware.maker())
                .put("batch", hardware.batch())
                .putKnown("placed", row.part().placed().map(date -> Json.of(date.print())))
                .putKnown("replaced_since", row.replacedSince().map(date -> Json.of(date.print())))
                .putWord("condition", row.state().condition())
                .putKnown("seen_on", row.state().seenOn().map(date -> Json.of(date.print())))
                .putIfTrue("contradictory", row.state().contradictory())
                .putKnown("not_seen_since", row.state().notSeenSince().map(date -> Json.of(date.print())))
                .putIfTrue("invented", row.invented())
                .done();
    }
}
