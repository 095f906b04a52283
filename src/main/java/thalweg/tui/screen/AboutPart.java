package thalweg.tui.screen;

import java.util.ArrayList;
import java.util.List;
import thalweg.logbook.PartRow;
import thalweg.text.Width;
import thalweg.tui.core.Canvas;
import thalweg.tui.core.Style;
import thalweg.tui.core.Surroundings;
import thalweg.tui.widget.Paragraph;

/** What is known of a part that a search over all canyons found. */
final class AboutPart {

    private AboutPart() {}

    /** Everything, with where it is. */
    static List<Paragraph> whole(PartRow row, Surroundings around) {
        List<Paragraph> text = new ArrayList<>();
        text.add(Paragraph.of(row.part().label(), Style.STRONG));
        text.add(Paragraph.of(around.say("canyons.station", row.stationName(), row.canyonName())));
        if (row.invented()) {
            text.add(Paragraph.of(around.say("invented"), Style.CAUTION));
        }
        text.add(Paragraph.of(
                Looks.state(around, row.state()), Looks.style(row.state().condition())));
        text.add(Paragraph.of(About.hardware(row.part(), around)));
        text.add(Paragraph.of(placed(row, around)));
        replaced(row, around, text);
        if (!row.part().note().isEmpty()) {
            text.add(Paragraph.of(row.part().note()));
        }
        return text;
    }

    /** Draws what the columns of a narrow list leave out, the most important first and as far as there is room. */
    static void drawBrief(Canvas canvas, PartRow row, Surroundings around) {
        List<Paragraph> text = new ArrayList<>();
        replaced(row, around, text);
        text.add(Paragraph.of(About.hardware(row.part(), around), Style.NORMAL));
        text.add(Paragraph.of(placed(row, around) + "; " + row.canyonName(), Style.NORMAL));
        int at = 0;
        for (Paragraph paragraph : text) {
            for (String line : Width.wrap(paragraph.text(), Math.max(1, canvas.columns()))) {
                canvas.fit(at++, 0, canvas.columns(), line, paragraph.style());
            }
        }
    }

    private static String placed(PartRow row, Surroundings around) {
        return around.say(
                "parts.placed_on",
                row.part().placed().map(date -> Looks.ago(around, date)).orElse(around.say("unknown")));
    }

    private static void replaced(PartRow row, Surroundings around, List<Paragraph> text) {
        row.replacedSince()
                .ifPresent(date ->
                        text.add(Paragraph.of(around.say("parts.replaced_since", date.print()), Style.CAUTION)));
    }
}
