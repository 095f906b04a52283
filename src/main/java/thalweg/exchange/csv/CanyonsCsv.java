package thalweg.exchange.csv;

import java.util.List;
import java.util.Locale;
import thalweg.logbook.CanyonRecord;
import thalweg.logbook.Standing;
import thalweg.place.Position;
import thalweg.route.Canyon;
import thalweg.route.PartialDate;
import thalweg.units.Length;

/** Canyons as CSV. */
public final class CanyonsCsv {

    private static final List<String> COLUMNS = List.of(
            "canyon",
            "other_names",
            "region",
            "country",
            "french_grade",
            "american_grade",
            "longest_drop_cm",
            "stations",
            "worst_condition",
            "gone",
            "never_inspected",
            "last_inspected",
            "latitude",
            "longitude",
            "accuracy_m",
            "invented",
            "canyon_uid");

    private CanyonsCsv() {}

    /** The canyons in their order, a line each; what is unknown is an empty cell. */
    public static String write(List<CanyonRecord> canyons) {
        return CsvText.of(COLUMNS, canyons, CanyonsCsv::cells);
    }

    private static List<String> cells(CanyonRecord record) {
        Canyon canyon = record.canyon();
        Standing standing = record.standing();
        return List.of(
                canyon.name(),
                String.join("; ", canyon.otherNames()),
                canyon.region(),
                canyon.country(),
                canyon.french().map(grade -> grade.print()).orElse(""),
                canyon.american().map(grade -> grade.print()).orElse(""),
                record.longestDrop()
                        .map(Length::inCentimetres)
                        .map(String::valueOf)
                        .orElse(""),
                Integer.toString(record.stations().size()),
                standing.worst()
                        .map(worst -> worst.name().toLowerCase(Locale.ROOT))
                        .orElse(""),
                Integer.toString(standing.gone()),
                Integer.toString(standing.neverSeen()),
                record.newestInspection().map(PartialDate::print).orElse(""),
                canyon.position().map(Position::printLatitude).orElse(""),
                canyon.position().map(Position::printLongitude).orElse(""),
                canyon.position()
                        .flatMap(Position::accuracyMetres)
                        .map(String::valueOf)
                        .orElse(""),
                canyon.invented() ? "yes" : "",
                canyon.uid().text());
    }
}
