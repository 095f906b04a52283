package thalweg.exchange.csv;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import thalweg.logbook.CanyonRecord;
import thalweg.logbook.Entry;
import thalweg.logbook.Inspection;
import thalweg.logbook.LineRecord;
import thalweg.logbook.PartRecord;
import thalweg.logbook.StationRecord;

/** All that was found on parts, as CSV: what was corrected or withdrawn is there too, and said not to count. */
public final class InspectionsCsv {

    private static final List<String> COLUMNS = List.of(
            "canyon",
            "place",
            "station",
            "part",
            "kind",
            "on",
            "by",
            "found",
            "left",
            "water",
            "work",
            "note",
            "counts",
            "written_by",
            "written_at",
            "invented",
            "entry_uid",
            "part_uid",
            "station_uid",
            "canyon_uid");

    /** An inspection with what it is of. */
    private record Row(
            CanyonRecord canyon, LineRecord place, StationRecord station, PartRecord part, Entry<Inspection> entry) {}

    private InspectionsCsv() {}

    /** The inspections by canyon, along the line, those of a part newest first; a part that was not seen has no condition. */
    public static String write(List<CanyonRecord> canyons) {
        List<Row> rows = new ArrayList<>();
        for (CanyonRecord canyon : canyons) {
            for (LineRecord place : canyon.line()) {
                for (StationRecord station : place.stations()) {
                    station.parts()
                            .forEach(part -> part.inspections()
                                    .forEach(entry -> rows.add(new Row(canyon, place, station, part, entry))));
                }
            }
        }
        return CsvText.of(COLUMNS, rows, InspectionsCsv::cells);
    }

    private static List<String> cells(Row row) {
        Inspection inspection = row.entry().content();
        return List.of(
                row.canyon().canyon().name(),
                Integer.toString(row.place().number()),
                row.station().station().name(),
                row.part().part().label(),
                word(Optional.of(row.part().part().kind())),
                inspection.on().print(),
                inspection.by(),
                word(inspection.found()),
                word(inspection.left()),
                word(inspection.water()),
                inspection.work().stream().map(work -> word(Optional.of(work))).collect(Collectors.joining("; ")),
                inspection.note(),
                row.entry().counts() ? "yes" : "no",
                row.entry().author(),
                row.entry().at(),
                row.canyon().canyon().invented() ? "yes" : "",
                row.entry().uid().text(),
                row.part().part().uid().text(),
                row.station().station().uid().text(),
                row.canyon().canyon().uid().text());
    }

    private static String word(Optional<? extends Enum<?>> value) {
        return value.map(known -> known.name().toLowerCase(Locale.ROOT)).orElse("");
    }
}
