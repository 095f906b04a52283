package thalweg.exchange.csv;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import thalweg.logbook.CanyonRecord;
import thalweg.logbook.LineRecord;
import thalweg.logbook.StationRecord;
import thalweg.route.Obstacle;
import thalweg.route.Station;
import thalweg.route.StationText;

/** The lines of canyons as CSV: a station with its place a row, and a row for each place without one. */
public final class PlacesCsv {

    private static final List<String> COLUMNS = List.of(
            "canyon",
            "place",
            "place_kind",
            "place_name",
            "height_cm",
            "distance_cm",
            "way_out_min",
            "place_note",
            "place_latitude",
            "place_longitude",
            "place_accuracy_m",
            "station",
            "side",
            "rope_needed_cm",
            "exposure",
            "latitude",
            "longitude",
            "accuracy_m",
            "finding",
            "rub_points",
            "landing",
            "notes",
            "invented",
            "station_uid",
            "place_uid",
            "canyon_uid");

    /** A station, if there is one, with what it is in. */
    private record Row(CanyonRecord canyon, LineRecord place, Optional<StationRecord> station) {}

    private PlacesCsv() {}

    /** The places by canyon, along the line. */
    public static String write(List<CanyonRecord> canyons) {
        List<Row> rows = new ArrayList<>();
        for (CanyonRecord canyon : canyons) {
            for (LineRecord place : canyon.line()) {
                if (place.stations().isEmpty()) {
                    rows.add(new Row(canyon, place, Optional.empty()));
                }
                place.stations().forEach(station -> rows.add(new Row(canyon, place, Optional.of(station))));
            }
        }
        return CsvText.of(COLUMNS, rows, PlacesCsv::cells);
    }

    private static List<String> cells(Row row) {
        Obstacle place = row.place().obstacle();
        return Stream.of(
                        List.of(
                                row.canyon().canyon().name(),
                                Integer.toString(row.place().number()),
                                CellText.word(place.kind()),
                                place.name(),
                                CellText.centimetres(place.height()),
                                CellText.centimetres(place.distance()),
                                CellText.number(place.wayOut()),
                                place.note()),
                        CellText.position(place.position()),
                        row.station()
                                .map(station -> station(station.station()))
                                .orElse(List.of("", "", "", "", "", "", "", "", "", "", "")),
                        List.of(
                                CellText.yes(row.canyon().canyon().invented()),
                                CellText.of(
                                        row.station(), at -> at.station().uid().text()),
                                place.uid().text(),
                                row.canyon().canyon().uid().text()))
                .flatMap(List::stream)
                .toList();
    }

    private static List<String> station(Station station) {
        return Stream.of(
                        List.of(
                                station.name(),
                                CellText.word(station.side()),
                                CellText.centimetres(station.ropeNeeded()),
                                CellText.word(station.exposure())),
                        CellText.position(station.position()),
                        List.of(
                                CellText.prose(station.prose(), StationText.FINDING),
                                CellText.prose(station.prose(), StationText.RUB_POINTS),
                                CellText.prose(station.prose(), StationText.LANDING),
                                CellText.prose(station.prose(), StationText.NOTES)))
                .flatMap(List::stream)
                .toList();
    }
}
