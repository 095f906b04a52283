package thalweg.tui.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import thalweg.due.Due;
import thalweg.due.DueRules;
import thalweg.due.DueTask;
import thalweg.due.DueWords;
import thalweg.logbook.ListedStation;
import thalweg.logbook.PartRecord;
import thalweg.logbook.StationRecord;
import thalweg.route.Exposure;
import thalweg.tui.core.Style;
import thalweg.tui.core.Surroundings;
import thalweg.tui.widget.Paragraph;

/** What is due of parts and stations that are shown. */
final class DueMark {

    private DueMark() {}

    /** A word behind a part that is due; empty text behind others. */
    static String of(PartRecord part, Optional<Exposure> exposure, Surroundings around) {
        return isDue(part, exposure, around) ? "  " + around.say("due.mark") : "";
    }

    /** A word with the number of parts behind a station where some are due; empty text behind others. */
    static String of(StationRecord station, Surroundings around) {
        long due = station.anchors().stream()
                .flatMap(anchor -> anchor.parts().stream())
                .filter(part -> isDue(part, station.station().exposure(), around))
                .count();
        return marks(due, around);
    }

    /** The same behind a station of a list; empty text where nobody asked. */
    static String of(ListedStation station, Surroundings around) {
        return marks(station.due().orElse(0), around);
    }

    private static String marks(long due, Surroundings around) {
        return due == 0 ? "" : around.say("due.marks", due);
    }

    private static boolean isDue(PartRecord part, Optional<Exposure> exposure, Surroundings around) {
        return dues(part, exposure, around).get(0).isDue(around.today());
    }

    private static List<Due> dues(PartRecord part, Optional<Exposure> exposure, Surroundings around) {
        return rules(around).of(part.part(), part.state(), part.replacedSince(), exposure);
    }

    private static DueRules rules(Surroundings around) {
        return new DueRules(around.settings(), around.today());
    }

    /** How far the last look can be relied on, what is to be done when, and why. */
    static List<Paragraph> reasons(PartRecord part, Optional<Exposure> exposure, Surroundings around) {
        List<Paragraph> text = new ArrayList<>();
        text.add(Paragraph.gap());
        text.add(Paragraph.of(around.say(
                "due.last_look",
                DueWords.confidence(rules(around).confidence(part.state(), exposure), around.phrases()))));
        for (Due due : dues(part, exposure, around)) {
            Style style =
                    due.task() == DueTask.MEND ? Style.BAD : due.isDue(around.today()) ? Style.MIND : Style.NORMAL;
            text.add(Paragraph.of(DueWords.what(due, around.today(), around.phrases()), style));
            text.add(Paragraph.of(DueWords.why(due, around.phrases()), Style.FAINT));
        }
        return text;
    }
}
