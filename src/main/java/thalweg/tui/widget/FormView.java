package thalweg.tui.widget;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import thalweg.text.Width;
import thalweg.tui.core.Canvas;
import thalweg.tui.core.Style;
import thalweg.tui.core.Surroundings;

/** Draws a form: labels, fields, the fault of each, and the help of the one with the focus. */
public final class FormView {

    /** Rows of a field of several lines. */
    private static final int MOST_LINES = 4;

    /** Rows at the foot for the help or the fault of the focused field. */
    private static final int HELP_ROWS = 2;

    private FormView() {}

    /** Draws as many fields as fit around the one with the focus. */
    public static void draw(Canvas canvas, Form form, Surroundings around) {
        int label = Math.min(
                form.fields().stream()
                        .mapToInt(field -> Width.of(field.label()))
                        .max()
                        .orElse(0),
                Math.max(12, canvas.columns() * 2 / 5));
        int rows = bodyRows(canvas.rows());
        int all = height(form, 0, form.fields().size());
        boolean bar = all > rows;
        Canvas body = canvas.part(0, 0, rows, canvas.columns() - (bar ? 2 : 0));
        int from = firstShown(form, rows);
        int row = 0;
        for (int i = from; i < form.fields().size() && row < rows; i++) {
            row += form.shows(i) ? field(body, row, form, i, label) : 0;
        }
        if (bar) {
            int above = height(form, 0, from);
            Lists.scrollBar(canvas.part(0, 0, rows, canvas.columns()), above, all, around.glyphs());
        }
        Field focused = form.focused();
        // What nobody has filled in yet is no fault of theirs; the help says what belongs there.
        Optional<String> fault = focused.fault().filter(why -> form.refused() || form.touched());
        String named = form.refused() ? around.labelled(focused.label(), "") : "";
        String sentence = fault.map(why -> "! " + named + why).orElse(focused.help());
        List<String> help = Width.wrap(sentence, Math.max(1, canvas.columns()));
        if (fault.isPresent()) {
            fault(canvas, help);
            return;
        }
        for (int line = 0; line < Math.min(HELP_ROWS, help.size()); line++) {
            boolean cut = line == HELP_ROWS - 1 && help.size() > HELP_ROWS;
            String text = help.get(line) + (cut ? " …" : "");
            canvas.put(canvas.rows() - HELP_ROWS + line, 0, Width.cut(text, canvas.columns()), Style.FAINT);
        }
    }

    /** Nothing of a fault is cut: it is said here alone, and covers fields where it needs more rows than the help. */
    private static void fault(Canvas canvas, List<String> lines) {
        int from = Math.max(0, canvas.rows() - Math.max(HELP_ROWS, lines.size()));
        for (int line = 0; line < lines.size() && from + line < canvas.rows(); line++) {
            if (lines.size() > HELP_ROWS) {
                canvas.fill(from + line, Style.ERROR);
            }
            canvas.put(from + line, 0, lines.get(line), Style.ERROR);
        }
    }

    /**
     * The field at a row of the canvas in which the form was drawn.
     *
     * @param rows of that canvas
     * @return its index
     */
    public static Optional<Integer> fieldAt(Form form, int row, int rows) {
        int bodyRows = bodyRows(rows);
        int top = 0;
        for (int i = firstShown(form, bodyRows); i < form.fields().size() && top < bodyRows; i++) {
            int below = top + height(form, i);
            if (row >= top && row < Math.min(below, bodyRows)) {
                return Optional.of(i);
            }
            top = below;
        }
        return Optional.empty();
    }

    private static int bodyRows(int rows) {
        return Math.max(0, rows - HELP_ROWS);
    }

    private static int firstShown(Form form, int rows) {
        int from = form.focus();
        int taken = height(form, from);
        while (from > 0 && taken + height(form, from - 1) <= rows * 2 / 3) {
            from--;
            taken += height(form, from);
        }
        int after = height(form, from, form.fields().size());
        while (from > 0 && after + height(form, from - 1) <= rows) {
            from--;
            after += height(form, from);
        }
        return from;
    }

    /** Of the fields from one index to before another [rows]. */
    private static int height(Form form, int from, int to) {
        return IntStream.range(from, to).map(index -> height(form, index)).sum();
    }

    private static int height(Form form, int index) {
        return form.shows(index) ? height(form.fields().get(index)) : 0;
    }

    private static int height(Field field) {
        return field.manyLines() ? MOST_LINES : 1;
    }

    private static int field(Canvas canvas, int row, Form form, int index, int label) {
        Field field = form.fields().get(index);
        boolean focused = index == form.focus();
        boolean wrong = field.fault().isPresent() && (form.refused() || (focused && form.touched()));
        canvas.put(row, 0, focused ? ">" : wrong ? "!" : " ", wrong ? Style.ERROR : Style.KEY);
        canvas.fit(row, 2, label, field.label(), focused ? Style.STRONG : Style.NORMAL);
        int at = label + 4;
        Canvas room = canvas.part(row, at, height(field), canvas.columns() - at);
        Style style = focused ? Style.FOCUS : Style.FIELD;
        if (field.input() instanceof Field.Input.Chosen chosen) {
            String text = chosen.labels().get(chosen.chosen());
            room.put(0, 0, Width.cut(focused ? "< " + text + " >" : text, room.columns()), style);
            if (focused) {
                room.cursor(0, 0);
            }
        } else if (field.input() instanceof Field.Input.Typed typed) {
            if (field.manyLines()) {
                FieldLines.draw(room, typed.field(), focused, style);
            } else {
                FieldLine.draw(room, typed.field(), focused, style);
            }
        }
        return height(field);
    }
}
