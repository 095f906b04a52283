package thalweg.exchange.csv;

import java.util.ArrayList;
import java.util.List;
import thalweg.logbook.CanyonRecord;
import thalweg.logbook.Standing;
import thalweg.route.AmericanGrade;
import thalweg.route.Canyon;
import thalweg.route.CanyonText;
import thalweg.route.FrenchGrade;

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
            "stated_longest_drop_cm",
            "approach_time_min",
            "descent_time_min",
            "exit_time_min",
            "ropes",
            "approach",
            "exit",
            "season",
            "catchment",
            "access",
            "emergency",
            "sources",
            "notes",
            "invented",
            "canyon_uid");

    private CanyonsCsv() {}

    /**
     * The canyons in their order, a line each; what is unknown is an empty cell. The longest drop is there twice: as it is
     * shown, which the line may tell, and as somebody stated it.
     */
    public static String write(List<CanyonRecord> canyons) {
        return CsvText.of(COLUMNS, canyons, CanyonsCsv::cells);
    }

    private static List<String> cells(CanyonRecord record) {
        Canyon canyon = record.canyon();
        Standing standing = record.standing();
        List<String> cells = new ArrayList<>(List.of(
                canyon.name(),
                CellText.list(canyon.otherNames()),
                canyon.region(),
                canyon.country(),
                CellText.of(canyon.french(), FrenchGrade::print),
                CellText.of(canyon.american(), AmericanGrade::print),
                CellText.centimetres(record.longestDrop()),
                Integer.toString(record.stations().size()),
                CellText.word(standing.worst()),
                Integer.toString(standing.gone()),
                Integer.toString(standing.neverSeen()),
                CellText.date(record.newestInspection())));
        cells.addAll(CellText.position(canyon.position()));
        cells.add(CellText.centimetres(canyon.longestDrop()));
        cells.add(CellText.number(canyon.times().approachMinutes()));
        cells.add(CellText.number(canyon.times().descentMinutes()));
        cells.add(CellText.number(canyon.times().exitMinutes()));
        for (CanyonText heading : CanyonText.values()) {
            cells.add(CellText.prose(canyon.prose(), heading));
        }
        cells.add(CellText.yes(canyon.invented()));
        cells.add(canyon.uid().text());
        return cells;
    }
}
