package thalweg.tui.screen;

import java.util.Optional;
import thalweg.logbook.LineRecord;
import thalweg.logbook.TripText;
import thalweg.logbook.TripTime;
import thalweg.plan.PlannedAt;
import thalweg.tui.core.Canvas;
import thalweg.tui.core.Style;
import thalweg.tui.core.Surroundings;

/** A place of the line as a row of a trip: its name, when it should be passed, when it was reached and left. */
final class TripRow {

    private static final int PLANNED = 16;
    private static final int TIME = 8;
    private static final int GAP = 1;

    /** Below that, what was planned is left out: what was noted is not. */
    private static final int NARROW = 50;

    private TripRow() {}

    static void head(Canvas line, Surroundings around) {
        row(
                line,
                around.say("trip.place"),
                around.say("trip.planned"),
                around.say("trip.reached"),
                around.say("trip.left"),
                Style.FAINT);
    }

    static void draw(Canvas line, LineRecord place, Optional<PlannedAt> planned, Optional<TripTime> time, Style style) {
        row(
                line,
                TripTime.label(place),
                planned.map(PlannedAt::print).orElse(""),
                time.flatMap(TripTime::reached).map(TripText::printTime).orElse("-"),
                time.flatMap(TripTime::left).map(TripText::printTime).orElse("-"),
                style);
    }

    private static void row(Canvas line, String place, String planned, String reached, String left, Style style) {
        boolean narrow = line.columns() < NARROW;
        int times = 2 * (TIME + GAP) + (narrow ? 0 : PLANNED + GAP);
        int room = Math.max(4, line.columns() - times);
        line.fit(0, 0, room, place, style);
        int at = room + GAP;
        if (!narrow) {
            line.fit(0, at, PLANNED, planned, style);
            at += PLANNED + GAP;
        }
        line.fit(0, at, TIME, reached, style);
        line.fit(0, at + TIME + GAP, TIME, left, style);
    }
}
