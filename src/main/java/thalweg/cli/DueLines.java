package thalweg.cli;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import thalweg.due.Due;
import thalweg.due.DuePart;
import thalweg.due.DueWords;
import thalweg.json.Json;
import thalweg.json.JsonText;
import thalweg.logbook.ConditionWords;
import thalweg.logbook.PartRow;
import thalweg.route.PartialDate;
import thalweg.service.ListDue;
import thalweg.text.Phrases;

/** Prints what is due part by part, so that the first stand there before the last are found. */
sealed interface DueLines {

    /** The next part. */
    void add(DuePart part);

    /** Nothing more comes. */
    void end();

    /** A table; nothing where nothing is due. */
    final class OfText implements DueLines {

        private final LocalDate today;
        private final Phrases phrases;
        private final Consumer<String> out;
        private Optional<RunningColumns> columns = Optional.empty();

        OfText(LocalDate today, Phrases phrases, Consumer<String> out) {
            this.today = today;
            this.phrases = phrases;
            this.out = out;
        }

        @Override
        public void add(DuePart part) {
            if (columns.isEmpty()) {
                columns = Optional.of(new RunningColumns(
                        List.of("CANYON", "STATION", "PART", "CONDITION", "SEEN", "DUE", "ID"), out));
            }
            columns.get().row(cells(part));
        }

        @Override
        public void end() {
            columns.ifPresent(RunningColumns::flush);
        }

        private List<String> cells(DuePart part) {
            PartRow row = part.row();
            return List.of(
                    row.canyonName() + (row.invented() ? " (invented)" : ""),
                    row.stationName(),
                    row.part().label(),
                    ConditionWords.told(row.state().condition(), phrases),
                    row.state().seenOn().map(PartialDate::print).orElse(""),
                    DueWords.what(part.first(), today, phrases),
                    row.part().uid().text());
        }
    }

    /** A table for a spreadsheet, its first line also where nothing is due. */
    final class OfCsv implements DueLines {

        private final LocalDate today;
        private final Consumer<String> out;

        OfCsv(LocalDate today, Consumer<String> out) {
            this.today = today;
            this.out = out;
            out.accept(ListDue.csvHead());
        }

        @Override
        public void add(DuePart part) {
            out.accept(ListDue.csv(part, today));
        }

        @Override
        public void end() {
            // Every line has its end.
        }
    }

    /** One list of objects. */
    final class OfJson implements DueLines {

        private static final String MARGIN = "  ";

        private final LocalDate today;
        private final Consumer<String> out;
        private boolean begun;

        OfJson(LocalDate today, Consumer<String> out) {
            this.today = today;
            this.out = out;
        }

        @Override
        public void add(DuePart part) {
            out.accept((begun ? ",\n" : "[\n") + MARGIN + JsonText.indented(json(part), MARGIN));
            begun = true;
        }

        @Override
        public void end() {
            out.accept(begun ? "\n]\n" : "[]\n");
        }

        private Json json(DuePart part) {
            return PartTable.json(part.row())
                    .with(
                            "due",
                            new Json.Items(
                                    part.dues().stream().<Json>map(this::json).toList()));
        }

        private Json json(Due due) {
            return Json.fields()
                    .put("task", due.task().name().toLowerCase(Locale.ROOT))
                    .put("reason", due.reason().name().toLowerCase(Locale.ROOT))
                    .putKnown("on", due.day().map(day -> Json.of(day.toString())))
                    .putKnown("days_over", due.daysOver(today).map(Json::of))
                    .done();
        }
    }
}
