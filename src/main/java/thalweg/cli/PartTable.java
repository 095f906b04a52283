package thalweg.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import thalweg.json.Json;
import thalweg.logbook.ConditionWords;
import thalweg.logbook.PartFinding;
import thalweg.logbook.PartRow;
import thalweg.route.Part;
import thalweg.route.PartialDate;
import thalweg.service.FindParts;
import thalweg.text.Phrases;

/** Parts that were found, as a table and as JSON. */
final class PartTable {

    private PartTable() {}

    /**
     * @param rows that fit
     * @param mayFit after them, each with what is unknown of it
     */
    static String of(List<PartRow> rows, List<FindParts.MayFit> mayFit, Phrases phrases) {
        List<List<String>> cells = new ArrayList<>();
        cells.add(List.of("CANYON", "STATION", "PART", "HARDWARE", "CONDITION", "SEEN", "PLACED", "ID"));
        rows.forEach(row -> cells.add(cells(row, hardware(row, phrases), phrases)));
        mayFit.forEach(may -> cells.add(cells(
                may.row(),
                hardware(may.row(), phrases) + " (may fit: " + words(may.unknown(), " and ") + " unknown)",
                phrases)));
        return Columns.of(cells);
    }

    private static List<String> cells(PartRow row, String hardware, Phrases phrases) {
        return List.of(
                row.canyonName() + (row.invented() ? " (invented)" : ""),
                row.stationName(),
                row.part().label(),
                hardware,
                ConditionWords.told(row.state().condition(), phrases)
                        + (row.state().contradictory() ? ", " + phrases.say("condition.contradictory") : ""),
                row.state().seenOn().map(PartialDate::print).orElse(""),
                placed(row, phrases),
                row.part().uid().text());
    }

    /** Fields of the hardware in words. */
    static String words(List<PartFinding.Field> fields, String between) {
        return fields.stream().map(PartTable::word).collect(Collectors.joining(between));
    }

    private static String word(PartFinding.Field field) {
        return field.name().toLowerCase(Locale.ROOT);
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

    static Json json(List<PartRow> rows, List<FindParts.MayFit> mayFit) {
        return new Json.Items(Stream.concat(
                        rows.stream().map(PartTable::json),
                        mayFit.stream()
                                .<Json>map(may -> json(may.row())
                                        .with(
                                                "unknown_in",
                                                new Json.Items(may.unknown().stream()
                                                        .<Json>map(field -> Json.of(word(field)))
                                                        .toList()))))
                .toList());
    }

    /** A part as JSON. */
    static Json.Fields json(PartRow row) {
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
