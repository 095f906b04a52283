package thalweg.tui.screen;

import thalweg.logbook.CanyonRow;
import thalweg.logbook.ConditionWords;
import thalweg.logbook.FoundCanyon;
import thalweg.text.Width;
import thalweg.tui.core.Canvas;
import thalweg.tui.core.Style;
import thalweg.tui.core.Surroundings;

/**
 * The columns of the list of canyons: the narrower the list, the fewer.
 *
 * @param name cells of the name
 * @param where cells of region and country, 0 where there is no room
 * @param grades cells of the grades, 0 where there is no room
 * @param around for words and units
 */
record CanyonColumns(int name, int where, int grades, Surroundings around) {

    private static final int STATE = 20;
    private static final int GRADES = 22;
    private static final int WIDE = 76;
    private static final int WIDER = 96;

    static CanyonColumns of(int width, Surroundings around) {
        int grades = width >= WIDE ? GRADES : 0;
        int where = width >= WIDER ? 24 : 0;
        int name = Math.max(8, width - STATE - 2 - (grades > 0 ? grades + 2 : 0) - (where > 0 ? where + 2 : 0));
        return new CanyonColumns(name, where, grades, around);
    }

    void heading(Canvas line) {
        paint(
                line,
                around.say("canyons.name"),
                around.say("canyons.where"),
                around.say("canyons.grades"),
                around.say("canyons.state"),
                Style.FAINT,
                Style.FAINT);
    }

    /**
     * Paints a canyon.
     *
     * @param twin whether another canyon in the list has the same name, so that only the region tells them apart
     */
    void row(Canvas line, FoundCanyon canyon, boolean twin, Style style) {
        CanyonRow row = canyon.row();
        String name = (canyon.fits() ? "" : around.say("canyons.may_fit") + " ")
                + toldApart(row, twin)
                + (row.invented() ? " " + around.say("canyons.invented") : "");
        String grades =
                row.french() + (row.french().isEmpty() || row.american().isEmpty() ? "" : " / ") + row.american();
        String state = ConditionWords.told(row.standing(), STATE, around.phrases());
        Style coloured = style == Style.SELECTED ? style : Looks.style(row.standing());
        paint(line, name, row.whereabouts(), grades.isEmpty() ? around.say("unknown") : grades, state, style, coloured);
    }

    private String toldApart(CanyonRow row, boolean twin) {
        if (!twin || where > 0 || row.whereabouts().isEmpty()) {
            return row.name();
        }
        String region = ", " + row.whereabouts();
        int room = Math.max(name / 2, name - Width.of(region));
        return Width.cut(row.name(), room) + region;
    }

    private void paint(
            Canvas line, String first, String second, String third, String state, Style style, Style stateStyle) {
        line.fit(0, 0, name, first, style);
        int at = name + 2;
        if (where > 0) {
            line.fit(0, at, where, second, style);
            at += where + 2;
        }
        if (grades > 0) {
            line.fit(0, at, grades, third, style);
            at += grades + 2;
        }
        line.fit(0, at, STATE, state, stateStyle);
    }
}
