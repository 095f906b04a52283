package thalweg.tui.widget;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import thalweg.text.Width;
import thalweg.tui.core.Canvas;
import thalweg.tui.core.Style;
import thalweg.tui.core.Surroundings;

/** Draws a form: labels, fields, the fault of each, and the help of the one with the focus. */
public final class FormView {

    private static final int MOST_LINES = 4;

    private FormView() {}

    /** Draws as many fields as fit around the one with the focus. */
    public static void draw(Canvas canvas, Form form, Surroundings around) {
        int label = Math.min(
                form.fields().stream()
                        .mapToInt(field -> Width.of(field.label()))
                        .max()
                        .orElse(0),
                Math.max(12, canvas.columns() * 2 / 5));
        Canvas body = canvas.part(0, 0, canvas.rows() - 2, canvas.columns());
        int from = firstShown(form, body.rows());
        int row = 0;
        for (int i = from; i < form.fields().size() && row < body.rows(); i++) {
            row += field(body, row, form, i, label);
        }
        Field focused = form.focused();
        Optional<String> fault = focused.fault();
        List<String> help = Width.wrap(fault.orElse(focused.help()), Math.max(1, canvas.columns() - 1));
        for (int line = 0; line < Math.min(2, help.size()); line++) {
            String text = (line == 0 && fault.isPresent() ? "! " : "") + help.get(line);
            canvas.put(canvas.rows() - 2 + line, 0, text, fault.isPresent() ? Style.ERROR : Style.FAINT);
        }
    }

    private static int firstShown(Form form, int rows) {
        int from = form.focus();
        int taken = height(form.fields().get(from));
        while (from > 0 && taken + height(form.fields().get(from - 1)) <= rows * 2 / 3) {
            from--;
            taken += height(form.fields().get(from));
        }
        int after = 0;
        for (int i = from; i < form.fields().size(); i++) {
            after += height(form.fields().get(i));
        }
        while (from > 0 && after + height(form.fields().get(from - 1)) <= rows) {
            from--;
            after += height(form.fields().get(from));
        }
        return from;
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
            room.put(0, 0, focused ? "< " + text + " >" : text, style);
            if (focused) {
                room.cursor(0, 0);
            }
        } else if (field.input() instanceof Field.Input.Typed typed) {
            if (field.manyLines()) {
                lines(room, typed.field(), focused, style);
            } else {
                line(room, typed.field(), focused, style);
            }
        }
        return height(field);
    }

    private static void line(Canvas canvas, TextField field, boolean focused, Style style) {
        if (focused) {
            canvas.fill(0, style);
        }
        int cursor = Width.of(field.before());
        int shift = focused ? Math.max(0, cursor - canvas.columns() + 2) : 0;
        canvas.put(0, -shift, field.text(), style);
        if (focused) {
            canvas.cursor(0, cursor - shift);
        }
    }

    /** Lines break behind a space where there is one, and the cursor is shown on its own line. */
    private static void lines(Canvas canvas, TextField field, boolean focused, Style style) {
        List<String> clusters = field.clusters();
        List<Integer> starts = lineStarts(clusters, Math.max(2, canvas.columns() - 1));
        int cursorLine = 0;
        while (cursorLine + 1 < starts.size() && starts.get(cursorLine + 1) <= field.cursor()) {
            cursorLine++;
        }
        int top = Math.max(0, cursorLine - canvas.rows() + 1);
        top = focused ? top : 0;
        for (int row = 0; row < canvas.rows(); row++) {
            if (focused) {
                canvas.fill(row, style);
            }
            if (top + row < starts.size()) {
                int end = top + row + 1 < starts.size() ? starts.get(top + row + 1) : clusters.size();
                String line = String.join("", clusters.subList(starts.get(top + row), end));
                canvas.put(row, 0, line.replace("\n", ""), style);
            }
        }
        if (focused) {
            String before = String.join("", clusters.subList(starts.get(cursorLine), field.cursor()));
            canvas.cursor(cursorLine - top, Width.of(before));
        }
    }

    private static List<Integer> lineStarts(List<String> clusters, int width) {
        List<Integer> starts = new ArrayList<>(List.of(0));
        int used = 0;
        int afterSpace = 0;
        for (int i = 0; i < clusters.size(); i++) {
            int start = starts.get(starts.size() - 1);
            if (used + Width.of(clusters.get(i)) > width) {
                int next = afterSpace > start ? afterSpace : i;
                starts.add(next);
                used = Width.of(String.join("", clusters.subList(next, i)));
            }
            used += Width.of(clusters.get(i));
            if (clusters.get(i).equals("\n")) {
                starts.add(i + 1);
                used = 0;
                afterSpace = 0;
            } else if (clusters.get(i).equals(" ")) {
                afterSpace = i + 1;
            }
        }
        return starts;
    }
}
