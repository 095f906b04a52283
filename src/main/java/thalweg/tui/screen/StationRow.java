package thalweg.tui.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import thalweg.ledger.Uid;
import thalweg.logbook.AnchorRecord;
import thalweg.logbook.Entry;
import thalweg.logbook.PartRecord;
import thalweg.logbook.RigAnalysis;
import thalweg.logbook.RiggingNote;
import thalweg.logbook.StationRecord;
import thalweg.rig.KeptRig;
import thalweg.text.Width;
import thalweg.tui.core.Canvas;
import thalweg.tui.core.Style;
import thalweg.tui.core.Surroundings;
import thalweg.tui.widget.Paragraph;

/**
 * One row of a station's list.
 *
 * @param name on the left
 * @param state on the right, empty text where there is none
 * @param stateStyle how the state looks
 * @param heading whether other rows belong under it
 * @param anchor it belongs to, if any
 * @param destination where it is edited; empty for what never changes
 * @param details everything about it, made when somebody reads it
 */
record StationRow(
        String name,
        String state,
        Style stateStyle,
        boolean heading,
        Optional<AnchorRecord> anchor,
        Optional<Go> destination,
        Supplier<List<Paragraph>> details) {

    /** Everything about it. */
    List<Paragraph> detail() {
        return details.get();
    }

    /** The rows of a station: itself, each anchor with its parts, notes, analyses. */
    static List<StationRow> of(StationRecord record, Map<Uid, KeptRig> rigs, Surroundings around) {
        List<StationRow> rows = new ArrayList<>();
        rows.add(new StationRow(
                around.say("about.station", record.station().name()),
                Looks.condition(around, record.worst()),
                Looks.style(record.worst()),
                true,
                Optional.empty(),
                Optional.of(new Go.EditStation(
                        record.station().uid(),
                        record.station().obstacle(),
                        record.station().order(),
                        Optional.of(record.station()))),
                () -> About.station(record, around)));
        for (AnchorRecord anchor : record.anchors()) {
            rows.add(ofAnchor(anchor, around));
            anchor.parts().forEach(part -> rows.add(ofPart(anchor, part, around)));
        }
        record.notes().forEach(entry -> rows.add(ofNote(entry, around)));
        record.analyses()
                .forEach(entry ->
                        rows.add(ofAnalysis(record, entry, Optional.ofNullable(rigs.get(entry.uid())), around)));
        return rows;
    }

    private static StationRow ofAnchor(AnchorRecord record, Surroundings around) {
        List<Paragraph> detail = new ArrayList<>();
        detail.add(Paragraph.of(About.anchorName(record, around), Style.STRONG));
        if (!record.anchor().note().isEmpty()) {
            detail.add(Paragraph.of(record.anchor().note()));
        }
        record.parts()
                .forEach(part -> detail.add(Paragraph.of(part.part().label() + ": "
                        + About.hardware(part.part(), around) + "; " + Looks.state(around, part.state()))));
        if (record.parts().isEmpty()) {
            detail.add(Paragraph.of(around.say("station.no_parts")));
        }
        return new StationRow(
                About.anchorName(record, around),
                record.parts().isEmpty() ? around.say("station.no_parts_short") : "",
                Style.FAINT,
                true,
                Optional.of(record),
                Optional.of(new Go.EditAnchor(
                        record.anchor().uid(),
                        record.anchor().station(),
                        record.anchor().order(),
                        Optional.of(record.anchor()))),
                () -> detail);
    }

    private static StationRow ofPart(AnchorRecord anchor, PartRecord record, Surroundings around) {
        return new StationRow(
                "   " + record.part().label() + "  " + About.hardware(record.part(), around),
                Looks.condition(around, record.state().condition())
                        + (record.state().contradictory() ? " " + around.say("station.disagree") : "")
                        + record.state()
                                .seenOn()
                                .map(date -> "  " + date.print())
                                .orElse(""),
                Looks.style(record.state().condition()),
                false,
                Optional.of(anchor),
                Optional.of(new Go.EditPart(
                        record.part().uid(),
                        record.part().anchor(),
                        record.part().order(),
                        Optional.of(record.part()))),
                () -> About.part(record, around));
    }

    private static StationRow ofNote(Entry<RiggingNote> entry, Surroundings around) {
        RiggingNote note = entry.content();
        return new StationRow(
                around.say("station.note", note.on().print(), About.name(around, note.by())),
                "",
                Style.NORMAL,
                false,
                Optional.empty(),
                Optional.empty(),
                () -> About.note(entry, around));
    }

    private static StationRow ofAnalysis(
            StationRecord station, Entry<RigAnalysis> entry, Optional<KeptRig> rig, Surroundings around) {
        boolean stale =
                !entry.content().inventory().changesTo(station.inventory()).isEmpty();
        return new StationRow(
                around.say(
                        "station.analysis",
                        entry.content().on().print(),
                        About.name(around, entry.content().by())),
                stale ? around.say("station.stale") : "",
                stale ? Style.MIND : Style.NORMAL,
                false,
                Optional.empty(),
                Optional.empty(),
                () -> AboutAnalysis.of(station, entry, rig, around));
    }

    /** Whether it can be edited: what was found, noted or worked out never is. */
    boolean editable() {
        return destination.isPresent();
    }

    /** Paints it on one line; the state goes before the name where both do not fit. */
    void paint(Canvas line, Style style) {
        int room = Math.max(4, line.columns() - Width.of(state) - 2);
        Style plain = heading && style == Style.NORMAL ? Style.STRONG : style;
        line.fit(0, 0, room, name, plain);
        line.put(0, line.columns() - Width.of(state), state, style == Style.SELECTED ? style : stateStyle);
    }
}
