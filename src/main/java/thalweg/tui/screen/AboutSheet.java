package thalweg.tui.screen;

import java.util.ArrayList;
import java.util.List;
import thalweg.tui.core.Style;
import thalweg.tui.core.Surroundings;
import thalweg.tui.widget.Paragraph;

/** A sheet as it would be written, as text to read. */
final class AboutSheet {

    private static final int KILOBYTE = 1_000;

    private AboutSheet() {}

    /** Where it would go and how large it would be, then what it says. */
    static List<Paragraph> of(Told.SheetLookedAt looked, Surroundings around) {
        List<Paragraph> text = new ArrayList<>();
        long kilobytes = (looked.bytes() + KILOBYTE - 1) / KILOBYTE;
        text.add(Paragraph.of(around.say("sheet_form.look", looked.target(), kilobytes), Style.STRONG));
        if (looked.there()) {
            text.add(Paragraph.of(around.say("sheet_form.look.there"), Style.CAUTION));
        }
        text.add(Paragraph.of(around.say("sheet_form.look.text"), Style.FAINT));
        text.add(Paragraph.gap());
        looked.lines().forEach(line -> text.add(Paragraph.of(line)));
        return text;
    }
}
