package thalweg.exchange.csv;

import java.util.List;
import java.util.Locale;
import thalweg.logbook.ListedStation;
import thalweg.route.PartialDate;
import thalweg.units.Length;

/** Stations as CSV. */
public final class StationsCsv {

    private static final List<String> COLUMNS = List.of(
            "station",
            "canyon",
            "place",
            "place_kind",
            "height_cm",
            "parts",
            "worst_condition",
            "gone",
            "never_inspected",
            "oldest_look",
            "invented",
            "station_uid",
            "canyon_uid");

    private StationsCsv() {}

    /** The stations in their order, a line each; what is unknown is an empty cell. */
    public static String write(List<ListedStation> stations) {
        return CsvText.of(COLUMNS, stations, StationsCsv::cells);
    }

    private static List<String> cells(ListedStation station) {
        return List.of(
                station.name(),
                station.canyon().name(),
                Integer.toString(station.place()),
                station.kind().map(StationsCsv::word).orElse(""),
                station.height().map(Length::inCentimetres).map(String::valueOf).orElse(""),
                Integer.toString(station.parts()),
                station.standing().worst().map(StationsCsv::word).orElse(""),
                Integer.toString(station.standing().gone()),
                Integer.toString(station.standing().neverSeen()),
                station.oldestLook().map(PartialDate::print).orElse(""),
                station.canyon().invented() ? "yes" : "",
                station.uid().text(),
                station.canyon().uid().text());
    }

    private static String word(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT);
    }
}
