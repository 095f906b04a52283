package thalweg.tui.screen;

import thalweg.logbook.ConditionWords;
import thalweg.logbook.PartRow;
import thalweg.route.PartialDate;
import thalweg.tui.core.Canvas;
import thalweg.tui.core.Style;
import thalweg.tui.core.Surroundings;

/**
 * The columns of the list of parts: the narrower the list, the fewer.
 *
 * @param part cells of the part's label
 * @param station cells of the station's name
 * @param canyon cells of the canyon's name, 0 where there is no room
 * @param placed cells of the date of placing, 0 where there is no room
 * @param around for words
 */
record PartColumns(int part, int station, int canyon, int placed, Surroundings around) {

    /** Mark and word of a condition, but for the longest, which says that there is none. */
    private static final int STATE = 12;

    private static final int PLACED = 10;
    private static final int WIDE = 56;
    private static final int WIDER = 74;

    static PartColumns of(int width, Surroundings around) {
        int placed = width >= WIDER ? PLACED : 0;
        int names = width - STATE - 2 - (placed > 0 ? placed + 2 : 0);
        if (width >= WIDE) {
            int third = (names - 4) / 3;
            return new PartColumns(third, third, names - 4 - 2 * third, placed, around);
        }
        int half = Math.max(4, (names - 2) / 2);
        return new PartColumns(half, Math.max(4, names - 2 - half), 0, 0, around);
    }

    void heading(Canvas line) {
        paint(
                line,
                around.say("parts.canyon"),
                around.say("parts.station"),
                around.say("parts.part"),
                around.say("parts.condition"),
                around.say("parts.placed"),
                Style.FAINT,
                Style.FAINT);
    }

    void row(Canvas line, PartRow row, Style style) {
        Style coloured =
                style == Style.SELECTED ? style : Looks.style(row.state().condition());
        paint(
                line,
                row.canyonName(),
                row.stationName(),
                row.part().label(),
                ConditionWords.told(row.state().condition(), around.phrases()),
                row.part().placed().map(PartialDate::print).orElse(around.say("unknown")),
                style,
                coloured);
    }

    private void paint(
            Canvas line,
            String first,
            String second,
            String third,
            String state,
            String date,
            Style style,
            Style stateStyle) {
        int at = 0;
        if (canyon > 0) {
            line.fit(0, at, canyon, first, style);
            at += canyon + 2;
        }
        line.fit(0, at, station, second, style);
        at += station + 2;
        line.fit(0, at, part, third, style);
        at += part + 2;
        line.fit(0, at, STATE, state, stateStyle);
        at += STATE + 2;
        if (placed > 0) {
            line.fit(0, at, placed, date, style);
        }
    }
}
