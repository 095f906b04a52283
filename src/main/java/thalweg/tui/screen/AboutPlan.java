package thalweg.tui.screen;

import java.util.ArrayList;
import java.util.List;
import thalweg.plan.Plan;
import thalweg.plan.PlanWords;
import thalweg.tui.core.Style;
import thalweg.tui.core.Surroundings;
import thalweg.tui.widget.Paragraph;

/** The plan of a trip as text to read. */
final class AboutPlan {

    private AboutPlan() {}

    /** Where it is read. */
    static Go of(Plan plan, Surroundings around) {
        return new Go.Read(PlanWords.title(plan, around.phrases()), text(plan, around));
    }

    private static List<Paragraph> text(Plan plan, Surroundings around) {
        List<Paragraph> text = new ArrayList<>();
        for (PlanWords.Section section : PlanWords.of(plan, around.phrases(), around.units())) {
            text.add(Paragraph.of(section.heading(), Style.STRONG));
            section.lines().forEach(line -> text.add(Paragraph.of("- " + line)));
            text.add(Paragraph.gap());
        }
        text.add(Paragraph.of(around.say("plan.more"), Style.FAINT));
        text.add(Paragraph.of(around.caution("caution.aid"), Style.CAUTION));
        return text;
    }
}
