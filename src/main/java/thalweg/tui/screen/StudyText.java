package thalweg.tui.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import thalweg.rig.BestFocus;
import thalweg.tui.core.Style;
import thalweg.tui.core.Surroundings;
import thalweg.tui.widget.Paragraph;
import thalweg.units.Length;

/** What was studied about a rig, as text to read. */
final class StudyText {

    private StudyText() {}

    /** As far as it was asked for, with an empty line behind. */
    static List<Paragraph> of(RigStudies studies, Surroundings around) {
        List<Paragraph> text = new ArrayList<>();
        studies.best().ifPresent(best -> text.add(Paragraph.of(best(best, around), Style.STRONG)));
        if (!text.isEmpty()) {
            text.add(Paragraph.gap());
        }
        return text;
    }

    private static String best(BestFocus best, Surroundings around) {
        return best.found()
                .map(found -> around.say(
                        "rig.best",
                        metres(found.focus().x(), around),
                        metres(found.focus().y(), around),
                        metres(found.focus().z(), around),
                        found.shares().stream()
                                .map(force -> around.say(
                                        "rig.best.share",
                                        force.point(),
                                        String.format(Locale.ROOT, "%.0f", force.share() * 100)))
                                .collect(Collectors.joining(", ")),
                        found.times(),
                        found.timesAsGiven(),
                        best.why()))
                .orElseGet(() -> around.say("rig.best.none", best.why()));
    }

    private static String metres(double along, Surroundings around) {
        return new Length(along).printFine(around.units());
    }
}
