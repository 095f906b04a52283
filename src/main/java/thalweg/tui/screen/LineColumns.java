package thalweg.tui.screen;

import thalweg.tui.core.Canvas;
import thalweg.tui.core.Style;

/** The columns of a canyon's line. */
final class LineColumns {

    private static final int STATE = 20;
    private static final int SHORT_STATE = 16;
    private static final int ROPE = 8;
    private static final int NARROW = 56;

    private LineColumns() {}

    /** A narrow line has no room for the rope; the station itself tells it. */
    static void row(Canvas line, String name, String rope, String state, Style style, Style stateStyle) {
        boolean narrow = line.columns() < NARROW;
        int ropeRoom = narrow ? 0 : ROPE + 2;
        int stateRoom = narrow ? SHORT_STATE : STATE;
        int room = nameRoom(line);
        line.fit(0, 0, room, name, style);
        if (!narrow) {
            line.fit(0, room + 2, ROPE, rope, style);
        }
        line.fit(0, room + ropeRoom + 2, stateRoom, state, stateStyle);
    }

    static int nameRoom(Canvas line) {
        boolean narrow = line.columns() < NARROW;
        return Math.max(8, line.columns() - (narrow ? SHORT_STATE : ROPE + 2 + STATE) - 2);
    }
}
