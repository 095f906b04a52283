package thalweg.tui.shell;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import thalweg.text.Width;
import thalweg.tui.core.Canvas;
import thalweg.tui.core.Screen;
import thalweg.tui.core.Step;
import thalweg.tui.core.Style;
import thalweg.tui.core.Surroundings;

/** Paints what stands around every screen: title, foot line, questions. */
final class Surface {

    private Surface() {}

    /** Paints everything. */
    static Canvas draw(Shell shell) {
        Surroundings around = shell.around();
        Canvas canvas = Canvas.of(around.rows(), around.columns());
        if (shell.tooSmall()) {
            tooSmall(canvas, around);
            return canvas;
        }
        Screen screen = shell.top().screen();
        title(canvas, screen, around);
        Canvas body = canvas.part(1, 0, canvas.rows() - 2, canvas.columns());
        if (shell.keys().isPresent()) {
            shell.keys().get().draw(body, around);
            footOfKeyList(canvas, around);
            return canvas;
        }
        screen.draw(body, around);
        if (shell.asking().isPresent()) {
            question(canvas, shell.unsaved().keeps(shell.asking().get()), around);
        } else {
            foot(canvas, screen, shell.notice(), around);
        }
        return canvas;
    }

    private static void tooSmall(Canvas canvas, Surroundings around) {
        String text = around.say("small", Shell.LEAST_COLUMNS, Shell.LEAST_ROWS, around.columns(), around.rows());
        List<String> lines = Width.wrap(text, Math.max(1, canvas.columns()));
        for (int row = 0; row < Math.min(lines.size(), canvas.rows()); row++) {
            canvas.put(row, 0, lines.get(row), Style.NORMAL);
        }
    }

    private static void title(Canvas canvas, Screen screen, Surroundings around) {
        canvas.fill(0, Style.TITLE);
        String right = around.say("units." + around.units().name().toLowerCase(Locale.ROOT))
                + (around.readOnly() ? "  " + around.say("read_only") : "") + " ";
        int room = canvas.columns() - Width.of(right) - 2;
        canvas.put(0, 1, Width.cut(screen.title(around), Math.max(0, room)), Style.TITLE);
        canvas.put(0, canvas.columns() - Width.of(right), right, Style.TITLE);
    }

    private static void foot(Canvas canvas, Screen screen, Optional<Step.Notice> notice, Surroundings around) {
        int after = Foot.of(screen, notice, around).draw(canvas);
        if (notice.isPresent()) {
            notice(canvas, notice.get(), after);
        }
    }

    private static String text(Step.Notice notice) {
        return (notice.bad() ? "! " : "") + notice.text();
    }

    /** Whether a notice has room in the foot line from that column on. */
    static boolean fits(Step.Notice notice, int at, int columns) {
        return at + Width.of(text(notice)) <= columns;
    }

    /** A notice that is too long for the foot line takes as many rows above it as it needs. */
    private static void notice(Canvas canvas, Step.Notice notice, int after) {
        String text = text(notice);
        Style style = notice.bad() ? Style.ERROR : Style.NOTICE;
        int at = after;
        int row = canvas.rows() - 1;
        if (fits(notice, at, canvas.columns())) {
            canvas.put(row, at, text, style);
            return;
        }
        List<String> lines = Width.wrap(text, canvas.columns());
        int from = Math.max(1, row - lines.size());
        for (int i = 0; i < lines.size() && from + i < row; i++) {
            canvas.fill(from + i, style);
            canvas.put(from + i, 0, lines.get(i), style);
        }
    }

    private static void footOfKeyList(Canvas canvas, Surroundings around) {
        Foot.ofKeyList(around).draw(canvas);
    }

    private static void question(Canvas canvas, boolean keeps, Surroundings around) {
        int row = canvas.rows() - 1;
        List<String> lines =
                Width.wrap(around.say(keeps ? "unsaved.question_keeps" : "unsaved.question"), canvas.columns() - 2);
        for (int i = 0; i < lines.size(); i++) {
            int line = row - lines.size() + 1 + i;
            canvas.fill(line, Style.CAUTION);
            canvas.put(line, 1, lines.get(i), Style.CAUTION);
        }
    }
}
