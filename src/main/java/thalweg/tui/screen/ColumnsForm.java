package thalweg.tui.screen;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import thalweg.exchange.table.Columns;
import thalweg.exchange.table.GuessColumns;
import thalweg.exchange.table.Separator;
import thalweg.exchange.table.Table;
import thalweg.exchange.table.TableKind;
import thalweg.exchange.table.TableReader;
import thalweg.exchange.table.TableReport;
import thalweg.exchange.table.Target;
import thalweg.fault.Sentence;
import thalweg.json.Finding;
import thalweg.json.Findings;
import thalweg.text.Clean;
import thalweg.text.Width;
import thalweg.tui.core.Surroundings;
import thalweg.tui.widget.Field;
import thalweg.tui.widget.Form;
import thalweg.tui.widget.Paragraph;

/**
 * The columns of a table, each beside the field of the records that it is: guessed by their headings, to be changed. It
 * leads to what the table would change, and from there back here.
 */
record ColumnsForm(Told.TableRead read) implements FormTask {

    private static final String KIND = "kind";
    private static final String SEPARATOR = "separator";
    private static final String COLUMN = "column";

    /** Cells of a heading beside its field. */
    private static final int WIDEST_HEADING = 24;

    private static final int SAMPLES = 3;
    private static final int LONGEST_SAMPLE = 40;

    @Override
    public String title(Surroundings around) {
        return around.say("table.form.title", read.name().substring(read.name().lastIndexOf('/') + 1));
    }

    @Override
    public List<Paragraph> intro(Surroundings around) {
        return List.of(Paragraph.of(around.say("table.form.intro")));
    }

    @Override
    public Form form(Surroundings around) {
        return form(read.table(), read.kind().orElse(TableKind.CANYONS), around);
    }

    /** A table, and what is wrong with it. */
    private record Parsed(Table table, List<Sentence> findings) {}

    /** With the separator that was found, it was read already, away from the keys. */
    private Parsed parsed(Form form) {
        Optional<Separator> separator = Separator.of(form.value(SEPARATOR));
        if (separator.filter(one -> one != read.table().separator()).isEmpty()) {
            return new Parsed(read.table(), read.findings());
        }
        Findings findings = new Findings();
        Table table = TableReader.read(read.text(), separator, findings);
        return new Parsed(table, findings.all().stream().map(Finding::saying).toList());
    }

    private Form form(Table table, TableKind kind, Surroundings around) {
        List<Field> fields = new ArrayList<>();
        fields.add(Field.choice(
                KIND,
                around.say("table.form.kind"),
                around.say("help.table.form.kind"),
                Arrays.stream(TableKind.values()).map(TableKind::word).toList(),
                Arrays.stream(TableKind.values())
                        .map(one -> around.say("table.kind." + one.word()))
                        .toList(),
                kind.word()));
        fields.add(Field.choice(
                SEPARATOR,
                around.say("table.form.separator"),
                around.say("help.table.form.separator"),
                Arrays.stream(Separator.values()).map(Separator::word).toList(),
                Arrays.stream(Separator.values())
                        .map(one -> around.say("table.separator." + one.word()))
                        .toList(),
                table.separator().word()));
        List<Optional<Target>> guessed = new GuessColumns(kind, read.words()).of(table.headings());
        for (int i = 0; i < table.headings().size(); i++) {
            if (!table.headings().get(i).isBlank()) {
                fields.add(column(table, i, kind, guessed.get(i), around));
            }
        }
        return Form.of(fields);
    }

    private static Field column(
            Table table, int column, TableKind kind, Optional<Target> guessed, Surroundings around) {
        TableReport report = new TableReport(around.phrases(), around.units());
        List<Target> targets = targets(kind);
        List<String> options = new ArrayList<>(List.of(""));
        List<String> labels = new ArrayList<>(List.of(around.say("table.nothing")));
        targets.forEach(target -> {
            options.add(target.word());
            labels.add(report.label(target));
        });
        String heading = Clean.line(table.headings().get(column), WIDEST_HEADING * 2);
        return Field.choice(
                COLUMN + column,
                Width.cut(heading, WIDEST_HEADING),
                samples(table, column, around),
                options,
                labels,
                guessed.map(Target::word).orElse(""));
    }

    /** Every field of the kind; one that is measured also with each unit that a bare number may be in. */
    private static List<Target> targets(TableKind kind) {
        return kind.fields().stream()
                .flatMap(field -> Target.all(field).stream())
                .toList();
    }

    private static String samples(Table table, int column, Surroundings around) {
        String some = table.rows().stream()
                .map(row -> row.cells().get(column))
                .filter(cell -> !cell.isBlank())
                .distinct()
                .limit(SAMPLES)
                .map(cell -> Clean.line(cell, LONGEST_SAMPLE))
                .collect(Collectors.joining(" | "));
        return some.isEmpty() ? around.say("table.form.empty") : around.say("table.form.sample", some);
    }

    /** Another kind has other fields, and another separator other columns: they are guessed anew. */
    @Override
    public Form adapted(Form before, Form after, Surroundings around) {
        boolean same = before.value(KIND).equals(after.value(KIND))
                && before.value(SEPARATOR).equals(after.value(SEPARATOR));
        return same
                ? after
                : form(parsed(after).table(), TableKind.of(after.value(KIND)).orElseThrow(), around)
                        .focusedOn(after.focused().key());
    }

    @Override
    public String send(Surroundings around) {
        return around.say("key.preview");
    }

    @Override
    public boolean stoppable() {
        return true;
    }

    @Override
    public String refusal(Filled filled, Surroundings around) {
        Parsed parsed = parsed(filled.last());
        if (!parsed.findings().isEmpty()) {
            return around.say(
                    "table.form.broken",
                    around.phrases().say(parsed.findings().get(0)),
                    parsed.findings().size());
        }
        Columns columns = columns(filled.last(), parsed.table());
        return columns.twice().stream()
                .findFirst()
                .map(field ->
                        around.say("table.form.twice", new TableReport(around.phrases(), around.units()).label(field)))
                .orElse("");
    }

    @Override
    public Ask ask(Filled filled, Surroundings around) {
        Table table = parsed(filled.last()).table();
        return new Ask.PreviewTable(read.name(), table, columns(filled.last(), table));
    }

    @Override
    public Optional<Onward> onward(Told answer, Filled sent, Surroundings around) {
        return answer instanceof Told.TableUnderstood understood
                ? Optional.of(new Onward(
                        new Go.TakeIn(understood.name(), understood.plan().plan(), Optional.of(understood)), false))
                : Optional.empty();
    }

    private static Columns columns(Form form, Table table) {
        List<Optional<Target>> targets = new ArrayList<>();
        for (int i = 0; i < table.headings().size(); i++) {
            targets.add(form.field(COLUMN + i).flatMap(field -> Target.of(field.value())));
        }
        return new Columns(TableKind.of(form.value(KIND)).orElseThrow(), targets);
    }
}
