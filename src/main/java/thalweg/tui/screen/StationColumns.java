package thalweg.tui.screen;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import thalweg.logbook.Condition;
import thalweg.logbook.ConditionWords;
import thalweg.logbook.ListedStation;
import thalweg.text.Width;
import thalweg.tui.core.Canvas;
import thalweg.tui.core.Style;
import thalweg.tui.core.Surroundings;

/**
 * The columns of the list of all stations: the narrower the list, the fewer.
 *
 * @param station cells of the station's name
 * @param canyon cells of the canyon's name, 0 where there is no room
 * @param place cells of the place on the line, 0 where there is no room
 * @param state cells of the worst condition, 1 where there is only room for its mark
 * @param around for words
 */
record StationColumns(int station, int canyon, int place, int state, Surroundings around) {

    /** A whole date. */
    private static final int SEEN = 10;

    private static final int MARK = 1;
    /** What the longest words of a condition need: one gone, the worst of the rest, one unseen; and what most need. */
    private static final int WHOLE_STATE = 30;

    private static final int STATE = 20;
    private static final int PLACE = 18;
    private static final int WIDE = 60;
    private static final int WIDER = 96;

    /** From here on half of what a terminal is wider goes to the condition. */
    private static final int WIDEST_NAMES = 70;

    static StationColumns of(int width, Surroundings around) {
        if (width < WIDE) {
            return new StationColumns(Math.max(4, width - SEEN - MARK - 4), 0, 0, MARK, around);
        }
        int place = width >= WIDER ? PLACE : 0;
        int state = Math.min(WHOLE_STATE, STATE + Math.max(0, width - WIDEST_NAMES) / 2);
        int names = width - SEEN - state - 6 - (place > 0 ? place + 2 : 0);
        return new StationColumns(names - names / 2, names / 2, place, state, around);
    }

    void heading(Canvas line) {
        paint(
                line,
                around.say("parts.station"),
                around.say("parts.canyon"),
                around.say("stations.place"),
                state == MARK ? "" : around.say("canyons.state"),
                around.say("stations.seen"),
                Style.FAINT,
                Style.FAINT,
                Style.FAINT);
    }

    void row(Canvas line, ListedStation row, Style style) {
        boolean chosen = style == Style.SELECTED;
        paint(
                line,
                named(row),
                row.canyon().name(),
                place(row, around),
                state == MARK ? mark(row) : standing(row, state, around),
                seen(row, around),
                style,
                chosen ? style : Looks.style(row.standing()),
                chosen || seenWhole(row) ? style : Style.MIND);
    }

    /** The name is cut before the mark of what is due. */
    private String named(ListedStation row) {
        String mark = DueMark.of(row, around);
        return mark.isEmpty() ? row.name() : Width.cut(row.name(), Math.max(1, station - Width.of(mark))) + mark;
    }

    /** What is gone is as bad as what is unsafe, however good the rest is. */
    private String mark(ListedStation row) {
        return row.standing().gone() > 0
                ? ConditionWords.mark(Optional.of(Condition.GONE), around.phrases())
                : ConditionWords.mark(row.standing().condition(), around.phrases());
    }

    /** "3 drop, 18 m". */
    static String place(ListedStation row, Surroundings around) {
        return Stream.of(
                        row.place()
                                + row.kind()
                                        .map(kind -> " "
                                                + around.say("obstacle."
                                                        + kind.name().toLowerCase(Locale.ROOT)))
                                        .orElse(""),
                        row.height().map(height -> height.print(around.units())).orElse(""))
                .filter(part -> !part.isEmpty())
                .collect(Collectors.joining(", "));
    }

    private static String standing(ListedStation row, int room, Surroundings around) {
        return row.parts() == 0
                ? around.say("station.no_parts_short")
                : ConditionWords.told(row.standing(), room, around.phrases());
    }

    /** The worst condition of its parts, or that there are none. */
    static String standing(ListedStation row, Surroundings around) {
        return row.parts() == 0
                ? around.say("station.no_parts_short")
                : ConditionWords.told(row.standing(), around.phrases());
    }

    private static boolean seenWhole(ListedStation row) {
        return row.oldestLook().isPresent() && row.standing().neverSeen() == 0;
    }

    /** When the part that was longest not seen was seen last, or how many nobody has seen at all: that is older still. */
    private static String seen(ListedStation row, Surroundings around) {
        int never = row.standing().neverSeen();
        return row.oldestLook()
                .map(date -> never == 0 ? date.print() : around.say("stations.some_never", never))
                .orElse(around.say("stations.never"));
    }

    private void paint(
            Canvas line,
            String first,
            String second,
            String third,
            String fourth,
            String last,
            Style style,
            Style stateStyle,
            Style seenStyle) {
        int at = 0;
        if (state == MARK) {
            line.fit(0, at, MARK, fourth, stateStyle);
            at += MARK + 1;
        }
        line.fit(0, at, station, first, style);
        at += station + 2;
        if (canyon > 0) {
            line.fit(0, at, canyon, second, style);
            at += canyon + 2;
        }
        if (place > 0) {
            line.fit(0, at, place, third, style);
            at += place + 2;
        }
        if (state > MARK) {
            line.fit(0, at, state, fourth, stateStyle);
            at += state + 2;
        }
        line.fit(0, at, SEEN, last, seenStyle);
    }
}
