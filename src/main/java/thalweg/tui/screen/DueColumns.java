package thalweg.tui.screen;

import thalweg.due.DuePart;
import thalweg.due.DueTask;
import thalweg.due.DueWords;
import thalweg.tui.core.Canvas;
import thalweg.tui.core.Style;
import thalweg.tui.core.Surroundings;

/**
 * The columns of what is due: the narrower the list, the fewer.
 *
 * @param due cells of what is to be done and since when
 * @param part cells of the part's label
 * @param station cells of the station's name
 * @param canyon cells of the canyon's name, 0 where there is no room or only one
 * @param around for words
 */
record DueColumns(int due, int part, int station, int canyon, Surroundings around) {

    private static final int LONGEST = 27;
    private static final int WIDE = 66;

    static DueColumns of(int width, boolean ofAll, Surroundings around) {
        int due = Math.min(LONGEST, width / 2);
        int names = width - due - 2;
        if (ofAll && width >= WIDE) {
            int third = (names - 4) / 3;
            return new DueColumns(due, third, third, names - 4 - 2 * third, around);
        }
        int half = Math.max(4, (names - 2) / 2);
        return new DueColumns(due, half, Math.max(4, names - 2 - half), 0, around);
    }

    void heading(Canvas line) {
        paint(
                line,
                around.say("due.column"),
                around.say("parts.station"),
                around.say("parts.part"),
                around.say("parts.canyon"),
                Style.FAINT,
                Style.FAINT);
    }

    void row(Canvas line, DuePart part, Style style) {
        Style toned = part.first().task() == DueTask.MEND ? Style.BAD : Style.MIND;
        paint(
                line,
                DueWords.what(part.first(), around.today(), around.phrases()),
                part.row().stationName(),
                part.row().part().label(),
                part.row().canyonName(),
                style,
                style == Style.SELECTED ? style : toned);
    }

    private void paint(
            Canvas line, String first, String second, String third, String last, Style style, Style firstStyle) {
        line.fit(0, 0, due, first, firstStyle);
        int at = due + 2;
        line.fit(0, at, station, second, style);
        at += station + 2;
        line.fit(0, at, part, third, style);
        at += part + 2;
        if (canyon > 0) {
            line.fit(0, at, canyon, last, style);
        }
    }
}
