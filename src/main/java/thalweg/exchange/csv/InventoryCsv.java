package thalweg.exchange.csv;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import thalweg.logbook.AnchorRecord;
import thalweg.logbook.CanyonRecord;
import thalweg.logbook.LineRecord;
import thalweg.logbook.StationRecord;
import thalweg.route.Anchor;
import thalweg.route.Part;
import thalweg.route.PartPlace;
import thalweg.units.Force;

/** The anchors of stations as CSV: a part with its anchor a row, and a row for each anchor without one. */
public final class InventoryCsv {

    private static final List<String> COLUMNS = List.of(
            "canyon",
            "place",
            "station",
            "anchor",
            "anchor_role",
            "anchor_note",
            "part",
            "kind",
            "material",
            "size",
            "standard",
            "maker",
            "batch",
            "placed",
            "right_cm",
            "up_cm",
            "out_cm",
            "strength_n",
            "axial_strength_n",
            "holds_alone",
            "note",
            "invented",
            "part_uid",
            "anchor_uid",
            "station_uid",
            "canyon_uid");

    /** A part, if there is one, with what it is in. */
    private record Row(
            CanyonRecord canyon, LineRecord place, StationRecord station, Anchor anchor, Optional<Part> part) {}

    private InventoryCsv() {}

    /** The parts by canyon, along the line. */
    public static String write(List<CanyonRecord> canyons) {
        List<Row> rows = new ArrayList<>();
        for (CanyonRecord canyon : canyons) {
            for (LineRecord place : canyon.line()) {
                for (StationRecord station : place.stations()) {
                    station.anchors().forEach(anchor -> add(canyon, place, station, anchor, rows));
                }
            }
        }
        return CsvText.of(COLUMNS, rows, InventoryCsv::cells);
    }

    private static void add(
            CanyonRecord canyon, LineRecord place, StationRecord station, AnchorRecord anchor, List<Row> rows) {
        if (anchor.parts().isEmpty()) {
            rows.add(new Row(canyon, place, station, anchor.anchor(), Optional.empty()));
        }
        anchor.parts()
                .forEach(part -> rows.add(new Row(canyon, place, station, anchor.anchor(), Optional.of(part.part()))));
    }

    private static List<String> cells(Row row) {
        return Stream.of(
                        List.of(
                                row.canyon().canyon().name(),
                                Integer.toString(row.place().number()),
                                row.station().station().name(),
                                row.anchor().name(),
                                CellText.word(row.anchor().role()),
                                row.anchor().note()),
                        row.part()
                                .map(InventoryCsv::part)
                                .orElse(List.of("", "", "", "", "", "", "", "", "", "", "", "", "", "", "")),
                        List.of(
                                CellText.yes(row.canyon().canyon().invented()),
                                CellText.of(row.part(), part -> part.uid().text()),
                                row.anchor().uid().text(),
                                row.station().station().uid().text(),
                                row.canyon().canyon().uid().text()))
                .flatMap(List::stream)
                .toList();
    }

    private static List<String> part(Part part) {
        Part.Hardware made = part.hardware();
        return List.of(
                part.label(),
                CellText.word(part.kind()),
                made.material(),
                made.size(),
                made.standard(),
                made.maker(),
                made.batch(),
                CellText.date(part.placed()),
                CellText.centimetres(part.place().map(PartPlace::right)),
                CellText.centimetres(part.place().map(PartPlace::up)),
                CellText.centimetres(part.place().map(PartPlace::out)),
                newtons(part.strength()),
                newtons(part.axialStrength()),
                CellText.word(part.holdsAlone()),
                part.note());
    }

    private static String newtons(Optional<Force> force) {
        return CellText.of(force, value -> Math.round(value.newtons()));
    }
}
