package thalweg.exchange.csv;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import thalweg.due.Due;
import thalweg.due.DuePart;
import thalweg.ledger.Uid;
import thalweg.logbook.PartRow;
import thalweg.logbook.PartState;
import thalweg.route.Part;
import thalweg.route.PartialDate;

/** Parts as CSV. */
public final class PartsCsv {

    private static final List<String> COLUMNS = List.of(
            "canyon",
            "station",
            "part",
            "kind",
            "material",
            "size",
            "standard",
            "maker",
            "batch",
            "placed",
            "replaced_since",
            "condition",
            "seen_on",
            "entries_disagree",
            "not_seen_since",
            "invented",
            "part_uid",
            "station_uid",
            "canyon_uid");

    private PartsCsv() {}

    /** The parts in their order, a line each; what is unknown is an empty cell. */
    public static String write(List<PartRow> rows) {
        return CsvText.of(COLUMNS, rows, PartsCsv::cells);
    }

    /** The same with those that may fit after those that do, told apart in a last column. */
    public static String write(List<PartRow> fit, List<PartRow> mayFit) {
        Set<Uid> unsure = mayFit.stream().map(row -> row.part().uid()).collect(Collectors.toSet());
        return CsvText.of(
                with(COLUMNS, "may_fit"),
                Stream.concat(fit.stream(), mayFit.stream()).toList(),
                row -> with(cells(row), unsure.contains(row.part().uid()) ? "yes" : ""));
    }

    /** The first line over parts that are due. */
    public static String dueHead() {
        List<String> columns = new ArrayList<>(COLUMNS);
        columns.addAll(List.of("task", "reason", "due_on", "days_over"));
        return CsvText.line(columns);
    }

    /** A line on a part that is due, with what is most urgent in the last columns. */
    public static String due(DuePart part, LocalDate today) {
        Due first = part.first();
        List<String> cells = new ArrayList<>(cells(part.row()));
        cells.add(word(first.task()));
        cells.add(word(first.reason()));
        cells.add(first.day().map(LocalDate::toString).orElse(""));
        cells.add(first.daysOver(today).map(String::valueOf).orElse(""));
        return CsvText.row(cells);
    }

    private static List<String> with(List<String> cells, String last) {
        return Stream.concat(cells.stream(), Stream.of(last)).toList();
    }

    private static List<String> cells(PartRow row) {
        Part part = row.part();
        PartState state = row.state();
        return List.of(
                row.canyonName(),
                row.stationName(),
                part.label(),
                word(part.kind()),
                part.hardware().material(),
                part.hardware().size(),
                part.hardware().standard(),
                part.hardware().maker(),
                part.hardware().batch(),
                date(part.placed()),
                date(row.replacedSince()),
                state.condition().map(PartsCsv::word).orElse(""),
                date(state.seenOn()),
                state.contradictory() ? "yes" : "",
                date(state.notSeenSince()),
                row.invented() ? "yes" : "",
                part.uid().text(),
                row.station().text(),
                row.canyon().text());
    }

    private static String word(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT);
    }

    private static String date(Optional<PartialDate> date) {
        return date.map(PartialDate::print).orElse("");
    }
}
