package thalweg.timeline;

import java.util.ArrayList;
import java.util.List;
import thalweg.text.Phrases;
import thalweg.text.Width;

/** A timeline in plain ASCII, but for the names in it. */
public final class TimelineText {

    private static final char THERE = '.';
    private static final char VAGUE = '=';

    private TimelineText() {}

    /**
     * The rows of the parts, the years, and what the signs mean.
     *
     * @param timeline that can be drawn
     * @param columns at least {@link TimelinePicture#LEAST_COLUMNS}
     * @return lines of at most that many cells
     */
    public static List<String> lines(Timeline timeline, int columns, Phrases phrases) {
        TimelineLayout layout = TimelineLayout.of(timeline, columns, phrases);
        List<String> lines = new ArrayList<>();
        int years = layout.axis().columns();
        String margin = " ".repeat(layout.left());
        for (TimelineLayout.Row row : layout.rows()) {
            StringBuilder drawn = new StringBuilder(" ".repeat(years));
            row.there().forEach(there -> fill(drawn, there, THERE));
            row.vague().forEach(vague -> fill(drawn, vague, VAGUE));
            if (TimelineLayout.showsBefore(row)) {
                put(drawn, 0, phrases.say("timeline.mark.before"));
            }
            row.signs().forEach(sign -> put(drawn, sign.column(), sign.text()));
            String name = Width.pad(row.name(), layout.left());
            lines.add((name + drawn + " ".repeat(layout.stateAt() - layout.left() - years) + row.state())
                    .stripTrailing());
        }
        StringBuilder scale = new StringBuilder(" ".repeat(years));
        layout.axis().ticks().forEach(tick -> put(scale, tick.column(), "|" + tick.year()));
        lines.add((margin + scale).stripTrailing());
        lines.addAll(Width.wrap(
                phrases.say("timeline.legend", String.join("; ", new TimelineWords(phrases).legend(layout))), columns));
        return lines;
    }

    private static void fill(StringBuilder line, TimelineLayout.Stretch stretch, char sign) {
        for (int column = stretch.from(); column <= stretch.to(); column++) {
            line.setCharAt(column, sign);
        }
    }

    private static void put(StringBuilder line, int column, String text) {
        int end = Math.min(line.length(), column + text.length());
        line.replace(column, end, text.substring(0, end - column));
    }
}
