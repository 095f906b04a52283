package thalweg.exchange.csv;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import thalweg.ledger.Uid;
import thalweg.logbook.CanyonRecord;
import thalweg.logbook.Correction;
import thalweg.logbook.Entry;
import thalweg.logbook.Inspection;
import thalweg.logbook.LineRecord;
import thalweg.logbook.PartRecord;
import thalweg.logbook.Photo;
import thalweg.logbook.StationRecord;
import thalweg.logbook.Withdrawal;

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
            "not_seen",
            "photos",
            "photo_hashes",
            "photo_captions",
            "withdrawn_because",
            "withdrawn_by",
            "withdrawn_at",
            "corrects_uid",
            "correction_reason",
            "round_uid",
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
                CellText.word(row.part().part().kind()),
                inspection.on().print(),
                inspection.by(),
                CellText.word(inspection.found()),
                CellText.word(inspection.left()),
                CellText.word(inspection.water()),
                inspection.work().stream().map(work -> CellText.word(work)).collect(Collectors.joining("; ")),
                inspection.note(),
                row.entry().counts() ? "yes" : "no",
                row.entry().author(),
                row.entry().at(),
                CellText.yes(!inspection.wasSeen()),
                lines(inspection.photos(), Photo::file),
                lines(inspection.photos(), photo -> photo.hash().hex()),
                lines(inspection.photos(), Photo::caption),
                CellText.of(row.entry().withdrawal(), Withdrawal::reason),
                CellText.of(row.entry().withdrawal(), Withdrawal::author),
                CellText.of(row.entry().withdrawal(), Withdrawal::at),
                CellText.of(
                        row.entry().correction(), correction -> correction.of().text()),
                CellText.of(row.entry().correction(), Correction::reason),
                CellText.of(inspection.round(), Uid::text),
                CellText.yes(row.canyon().canyon().invented()),
                row.entry().uid().text(),
                row.part().part().uid().text(),
                row.station().station().uid().text(),
                row.canyon().canyon().uid().text());
    }

    private static String lines(List<Photo> photos, Function<Photo, String> line) {
        return photos.stream().map(line).collect(Collectors.joining("\n"));
    }
}
