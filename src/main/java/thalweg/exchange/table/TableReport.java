package thalweg.exchange.table;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import thalweg.json.Json;
import thalweg.json.JsonText;
import thalweg.text.Clean;
import thalweg.text.Phrases;
import thalweg.units.Force;
import thalweg.units.Length;
import thalweg.units.UnitSystem;

/** What a table would change, in lines for a person: its columns, its first rows, then row by row. */
public final class TableReport {

    /** Rows that are shown as they are understood. */
    public static final int FIRST_ROWS = 3;

    private static final int LONGEST_VALUE = 60;

    private final Phrases phrases;
    private final UnitSystem units;

    public TableReport(Phrases phrases, UnitSystem units) {
        this.phrases = phrases;
        this.units = units;
    }

    /** What a field is called. */
    public String label(Field field) {
        return phrases.say("table.field." + field.word()).split(";", 2)[0];
    }

    /** What a column is taken for. */
    public String label(Target target) {
        return target.unit().isEmpty()
                ? label(target.field())
                : label(target.field()) + " (" + spelled(target.unit()) + ")";
    }

    private static String spelled(String unit) {
        return unit.equals("n") ? "N" : unit.equals("kn") ? "kN" : unit;
    }

    /** How many rows become what. */
    public String count(TablePlan plan) {
        return phrases.say(
                "table.count",
                plan.count(RowReport.State.NEW),
                plan.count(RowReport.State.CHANGED),
                plan.count(RowReport.State.SAME),
                plan.count(RowReport.State.REFUSED));
    }

    /** The columns, each with what it is taken for. */
    public List<String> columns(List<String> headings, Columns columns) {
        List<String> lines = new ArrayList<>();
        for (int i = 0; i < headings.size(); i++) {
            if (!headings.get(i).isBlank()) {
                String taken = columns.targets().get(i).map(this::label).orElse(phrases.say("table.nothing"));
                lines.add(phrases.say("table.column", shown(headings.get(i)), taken));
            }
        }
        return lines;
    }

    /** The first rows, as they are understood. */
    public List<String> first(List<Understood> rows) {
        return rows.stream()
                .map(row -> phrases.say(
                        "table.understood",
                        row.line(),
                        row.values().stream()
                                .map(value -> phrases.say("table.value", label(value.field()), told(value)))
                                .collect(Collectors.joining("; "))))
                .toList();
    }

    /** What becomes of the rows: those that are refused first, then what is new or changed; the same is only counted. */
    public List<String> rows(TablePlan plan, int most) {
        List<RowReport> told = new ArrayList<>();
        for (RowReport.State state : List.of(RowReport.State.REFUSED, RowReport.State.CHANGED, RowReport.State.NEW)) {
            plan.rows().stream().filter(row -> row.state() == state).forEach(told::add);
        }
        List<String> lines = new ArrayList<>();
        told.stream().limit(most).forEach(row -> lines.addAll(lines(row)));
        if (told.size() > most) {
            lines.add(phrases.count("table.more", told.size() - most));
        }
        return lines;
    }

    private List<String> lines(RowReport row) {
        String state = phrases.say("table.state." + row.state().name().toLowerCase(Locale.ROOT));
        String what = row.what().isEmpty() ? phrases.say("table.unnamed") : shown(row.what());
        return row.said().isEmpty()
                ? List.of(phrases.say("table.row", row.line(), state, what))
                : row.said().stream()
                        .map(why -> phrases.say("table.row.why", row.line(), state, what, why))
                        .toList();
    }

    private String told(Understood.Value value) {
        Field field = value.field();
        return switch (field.shape()) {
            case LENGTH -> Length.centimetres(number(value.value())).printFine(units);
            case FORCE -> new Force(number(value.value())).print(units);
            case MINUTES -> phrases.say("table.minutes", number(value.value()));
            case WORD -> phrases.say(field.list() + "." + text(value.value()));
            default -> shown(text(value.value()));
        };
    }

    private static long number(Json value) {
        return value instanceof Json.Decimal decimal ? decimal.value().longValue() : 0;
    }

    private static String text(Json value) {
        return value instanceof Json.Text text ? text.value() : JsonText.canonical(value);
    }

    private static String shown(String text) {
        return Clean.line(text, LONGEST_VALUE);
    }
}
