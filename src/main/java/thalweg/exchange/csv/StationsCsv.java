package thalweg.exchange.csv;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import thalweg.due.Due;
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
            "due_parts",
            "due",
            "due_reason",
            "due_on",
            "invented",
            "station_uid",
            "canyon_uid");

    private StationsCsv() {}

    /** The first line over stations. */
    public static String head() {
        return CsvText.line(COLUMNS);
    }

    /**
     * A line on a station; what is unknown is an empty cell.
     *
     * @param due what is due first of its parts; empty where nothing is
     */
    public static String line(ListedStation station, Optional<Due> due) {
        return CsvText.row(cells(station, due));
    }

    private static List<String> cells(ListedStation station, Optional<Due> due) {
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
                station.due().map(String::valueOf).orElse(""),
                due.map(first -> word(first.task())).orElse(""),
                due.map(first -> word(first.reason())).orElse(""),
                due.flatMap(Due::day).map(LocalDate::toString).orElse(""),
                station.canyon().invented() ? "yes" : "",
                station.uid().text(),
                station.canyon().uid().text());
    }

    private static String word(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT);
    }
}
