package thalweg.tui.screen;

import java.util.ArrayList;
import java.util.List;
import thalweg.logbook.ListedStation;
import thalweg.tui.core.Style;
import thalweg.tui.core.Surroundings;
import thalweg.tui.widget.Paragraph;

/** What the list of all stations knows of the chosen one. */
final class AboutListed {

    private AboutListed() {}

    /** Where there is room beside the list, everything; below it, what the columns leave out. */
    static List<Paragraph> station(ListedStation row, Surroundings around) {
        return around.wide() ? whole(row, around) : brief(row, around);
    }

    private static List<Paragraph> whole(ListedStation row, Surroundings around) {
        List<Paragraph> text = new ArrayList<>();
        text.add(Paragraph.of(row.name(), Style.STRONG));
        text.add(Paragraph.of(place(row, around)));
        if (!row.canyon().whereabouts().isEmpty()) {
            text.add(Paragraph.of(row.canyon().whereabouts()));
        }
        if (row.canyon().invented()) {
            text.add(Paragraph.of(around.say("invented"), Style.CAUTION));
        }
        text.add(Paragraph.gap());
        text.add(Paragraph.of(standing(row, around), Looks.style(row.standing())));
        text.add(seen(row, around));
        return text;
    }

    private static List<Paragraph> brief(ListedStation row, Surroundings around) {
        return List.of(Paragraph.of(place(row, around)), Paragraph.of(standing(row, around)), seen(row, around));
    }

    private static String place(ListedStation row, Surroundings around) {
        return around.say(
                "stations.at", StationColumns.place(row, around), row.canyon().name());
    }

    private static String standing(ListedStation row, Surroundings around) {
        String state = StationColumns.standing(row, around);
        return row.parts() == 0
                ? state
                : around.labelled(
                        around.phrases().count("stations.parts", row.parts()), state + DueMark.of(row, around));
    }

    private static Paragraph seen(ListedStation row, Surroundings around) {
        int never = row.standing().neverSeen();
        return row.oldestLook()
                .map(date -> never == 0
                        ? Paragraph.of(around.say("stations.seen_all", Looks.ago(around, date)))
                        : Paragraph.of(
                                around.phrases().count("stations.seen_some", never, Looks.ago(around, date)),
                                Style.MIND))
                .orElseGet(() -> Paragraph.of(around.say("stations.seen_never"), Style.MIND));
    }
}
