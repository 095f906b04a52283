package thalweg.tui.screen;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import thalweg.exchange.gpx.Waypoint;
import thalweg.text.Width;
import thalweg.tui.core.Canvas;
import thalweg.tui.core.Style;
import thalweg.tui.core.Surroundings;
import thalweg.tui.widget.Lists;
import thalweg.tui.widget.Paragraph;

/** Draws the placing of waypoints: both lists side by side where there is room, else the one that the arrows move in. */
final class PlacingView {

    /** Rows above the lists. */
    static final int HEAD_ROWS = 2;

    /** From here on the chosen waypoint is shown in full below the lists. */
    private static final int ROWS_FOR_DETAIL = 18;

    private static final int DETAIL_ROWS = 5;

    private static final int STATE = 24;
    private static final int SHORT_STATE = 16;
    private static final int ELEVATION = 7;
    private static final int COORDINATES = 23;
    private static final int FOR_ELEVATION = 56;
    private static final int FOR_COORDINATES = 76;
    private static final int FOR_NOTE = 96;
    private static final int NAME_BESIDE_NOTE = 24;
    private static final int MARK = 16;
    private static final int GAP = 2;

    private final PlacingScreen screen;
    private final Surroundings around;
    private final PlacingWords words;
    private final List<PlacingRow> rows;

    PlacingView(PlacingScreen screen, Surroundings around) {
        this.screen = screen;
        this.around = around;
        this.words = new PlacingWords(screen.placing(), around);
        this.rows = PlacingRow.of(screen.placing());
    }

    /** Rows of each list in a body of that many. */
    static int listRows(int bodyRows) {
        int detail = bodyRows >= ROWS_FOR_DETAIL ? DETAIL_ROWS + 1 : 0;
        return Math.max(1, bodyRows - HEAD_ROWS - detail);
    }

    /** Columns of the left list where both are shown. */
    static int leftWidth(int columns) {
        return columns * 55 / 100;
    }

    void draw(Canvas canvas) {
        int height = listRows(canvas.rows());
        head(canvas.part(0, 1, 1, canvas.columns() - 2));
        if (around.wide()) {
            int left = leftWidth(canvas.columns());
            headings(canvas.part(1, 2, 1, left - 3), around.say("placing.waypoints"));
            headings(canvas.part(1, left + 2, 1, canvas.columns() - left - 3), around.say("placing.line"));
            waypoints(canvas.part(HEAD_ROWS, 0, height, left - 1));
            line(canvas.part(HEAD_ROWS, left, height, canvas.columns() - left));
        } else {
            headings(canvas.part(1, 1, 1, canvas.columns() - 2), other());
            Canvas list = canvas.part(HEAD_ROWS, 0, height, canvas.columns());
            if (screen.at().onLine()) {
                line(list);
            } else {
                waypoints(list);
            }
        }
        if (canvas.rows() >= ROWS_FOR_DETAIL) {
            Canvas detail = canvas.part(HEAD_ROWS + height + 1, 1, DETAIL_ROWS, canvas.columns() - 2);
            Paragraph.draw(detail, words.about(screen.waypoint()), 0, around);
        }
    }

    /** How much is undecided, and what a new place would be. */
    private void head(Canvas canvas) {
        String kind = "< " + Looks.word(around, "obstacle", screen.kind()) + " >";
        String told = around.say("placing.new_kind") + " " + kind;
        String left = around.say(
                "placing.undecided",
                screen.placing().undecided(),
                screen.placing().waypoints().size());
        boolean both = Width.of(left) + GAP + Width.of(told) <= canvas.columns();
        String right = both ? told : kind;
        int room = Math.max(0, canvas.columns() - Width.of(right) - GAP);
        canvas.fit(0, 0, room, left, Style.NORMAL);
        canvas.put(0, room + GAP, right, Style.STRONG);
    }

    private static void headings(Canvas canvas, String text) {
        canvas.fit(0, 0, canvas.columns(), text, Style.FAINT);
    }

    /** Where only one list is shown, what is chosen in the other. */
    private String other() {
        return screen.at().onLine()
                ? around.say("placing.of_waypoint", words.waypoint(screen.waypoint()))
                : around.say("placing.at_row", words.row(screen.row(rows)).strip());
    }

    private void waypoints(Canvas canvas) {
        Lists.draw(
                canvas,
                screen.at().waypoints(),
                screen.placing().waypoints().size(),
                !screen.at().onLine(),
                around,
                this::waypoint);
    }

    private void waypoint(Canvas line, int index, Style style) {
        Waypoint waypoint = screen.placing().waypoints().get(index);
        int width = line.columns();
        int state = width >= FOR_ELEVATION ? STATE : SHORT_STATE;
        int elevation = width >= FOR_ELEVATION ? ELEVATION : 0;
        int coordinates = width >= FOR_COORDINATES ? COORDINATES : 0;
        int room = width - state - GAP - gapped(elevation) - gapped(coordinates);
        int note = width >= FOR_NOTE ? room - NAME_BESIDE_NOTE - GAP : 0;
        int name = Math.max(4, room - gapped(note));
        int column = 0;
        line.fit(0, column, name, words.waypoint(index), style);
        column += name + GAP;
        if (elevation > 0) {
            line.fit(0, column, elevation, words.elevation(index), style);
            column += gapped(elevation);
        }
        if (coordinates > 0) {
            line.fit(0, column, coordinates, waypoint.position().printDecimal(), style);
            column += gapped(coordinates);
        }
        if (note > 0) {
            line.fit(0, column, note, oneLine(waypoint.note()), style);
            column += gapped(note);
        }
        Style stateStyle = style == Style.SELECTED ? style : words.style(index);
        line.fit(0, column, state, words.state(index), stateStyle);
    }

    private static int gapped(int width) {
        return width > 0 ? width + GAP : 0;
    }

    private static String oneLine(String text) {
        return Stream.of(text.split("\n", -1))
                .map(String::strip)
                .filter(line -> !line.isEmpty())
                .collect(Collectors.joining("; "));
    }

    private void line(Canvas canvas) {
        Lists.draw(canvas, screen.at().line(), rows.size(), screen.at().onLine(), around, this::place);
    }

    private void place(Canvas line, int index, Style style) {
        PlacingRow row = rows.get(index);
        String mark = words.mark(row);
        int room = mark.isEmpty() ? 0 : Math.min(MARK, Width.of(mark)) + GAP;
        line.fit(0, 0, Math.max(4, line.columns() - room), words.row(row), style);
        if (room > 0) {
            Style markStyle = style == Style.SELECTED ? style : Style.FAINT;
            line.fit(0, line.columns() - room + GAP, room - GAP, mark, markStyle);
        }
    }
}
