package thalweg.tui.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import thalweg.amend.Contents;
import thalweg.amend.Fate;
import thalweg.body.ThingBody;
import thalweg.ledger.Uid;
import thalweg.logbook.AnchorRecord;
import thalweg.logbook.CanyonRecord;
import thalweg.logbook.ConditionWords;
import thalweg.logbook.Entry;
import thalweg.logbook.Inspection;
import thalweg.logbook.PartRecord;
import thalweg.logbook.RigAnalysis;
import thalweg.logbook.RiggingNote;
import thalweg.logbook.StationRecord;
import thalweg.rig.KeptRig;
import thalweg.route.Exposure;
import thalweg.text.Width;
import thalweg.tui.core.Canvas;
import thalweg.tui.core.Style;
import thalweg.tui.core.Surroundings;
import thalweg.tui.widget.Paragraph;

/**
 * One row of a station's list, or of a part's.
 *
 * @param name on the left
 * @param nameStyle how it looks where the row is not chosen
 * @param state on the right, empty text where there is none
 * @param stateStyle how the state looks
 * @param anchor it belongs to, if any
 * @param acts what can be done to it
 * @param details everything about it, made when somebody reads it
 */
record StationRow(
        String name,
        Style nameStyle,
        String state,
        Style stateStyle,
        Optional<AnchorRecord> anchor,
        Acts acts,
        Supplier<List<Paragraph>> details) {

    /** So much of a name is seen at least [cells]. */
    private static final int LEAST_NAME = 8;

    /** Everything about it. */
    List<Paragraph> detail() {
        return details.get();
    }

    /**
     * What can be done to what a row is about.
     *
     * @param uid of the thing or entry
     * @param entry whether it is an entry, which is corrected and withdrawn; a thing is edited and taken out
     * @param edit where it is edited or corrected, if it can be
     * @param remove where it is taken out or withdrawn, if it can be
     * @param refusal why it cannot; empty text where it can
     */
    record Acts(Uid uid, boolean entry, Optional<Go> edit, Optional<Go> remove, String refusal) {

        private static Acts thing(ThingBody body, Contents contents, Go edit) {
            return new Acts(body.uid(), false, Optional.of(edit), Optional.of(new Go.TakeOut(body, contents)), "");
        }

        private static Acts entry(Entry<?> entry, Optional<Go> edit, String line, Surroundings around) {
            boolean counts = entry.counts();
            return new Acts(
                    entry.uid(),
                    true,
                    edit.filter(go -> counts),
                    counts ? Optional.of(new Go.Withdraw(entry.uid(), line)) : Optional.empty(),
                    counts ? around.say("station.analysis_stays") : around.say("station.counts_no_longer"));
        }
    }

    /** The rows of a station: itself, each anchor with its parts, notes, analyses. */
    static List<StationRow> of(StationRecord record, Map<Uid, KeptRig> rigs, Surroundings around) {
        List<StationRow> rows = new ArrayList<>();
        rows.add(new StationRow(
                around.say("about.station", record.station().name()),
                Style.STRONG,
                ConditionWords.told(record.standing(), around.phrases()) + DueMark.of(record, around),
                Looks.style(record.standing()),
                Optional.empty(),
                Acts.thing(
                        ThingBody.of(record.station()),
                        Contents.of(record),
                        new Go.EditStation(
                                record.station().uid(),
                                record.station().obstacle(),
                                record.station().order(),
                                Optional.of(record.station()))),
                () -> About.station(record, around)));
        for (AnchorRecord anchor : record.anchors()) {
            rows.add(ofAnchor(anchor, around));
            anchor.parts()
                    .forEach(part ->
                            rows.add(ofPart(anchor, part, record.station().exposure(), "   ", around)));
        }
        record.notes().forEach(entry -> rows.add(ofNote(record, entry, around)));
        record.analyses()
                .forEach(entry ->
                        rows.add(ofAnalysis(record, entry, Optional.ofNullable(rigs.get(entry.uid())), around)));
        return rows;
    }

    /** The rows of a part: itself, then everything that was found on it, newest first. */
    static List<StationRow> of(CanyonRecord canyon, AnchorRecord anchor, PartRecord part, Surroundings around) {
        List<StationRow> rows = new ArrayList<>();
        rows.add(ofPart(
                anchor,
                part,
                canyon.station(anchor.anchor().station())
                        .flatMap(station -> station.station().exposure()),
                "",
                around));
        part.inspections().forEach(entry -> rows.add(ofInspection(canyon, part, entry, around)));
        return rows;
    }

    private static StationRow ofAnchor(AnchorRecord record, Surroundings around) {
        List<Paragraph> detail = new ArrayList<>();
        detail.add(Paragraph.of(About.anchorName(record, around), Style.STRONG));
        if (!record.anchor().note().isEmpty()) {
            detail.add(Paragraph.of(record.anchor().note()));
        }
        record.parts()
                .forEach(part -> detail.add(Paragraph.of(around.labelled(
                        part.part().label(),
                        About.hardware(part.part(), around) + "; " + Looks.state(around, part.state())))));
        if (record.parts().isEmpty()) {
            detail.add(Paragraph.of(around.say("station.no_parts")));
        }
        return new StationRow(
                About.anchorName(record, around),
                Style.STRONG,
                record.parts().isEmpty() ? around.say("station.no_parts_short") : "",
                Style.FAINT,
                Optional.of(record),
                Acts.thing(
                        ThingBody.of(record.anchor()),
                        Contents.of(record),
                        new Go.EditAnchor(
                                record.anchor().uid(),
                                record.anchor().station(),
                                record.anchor().order(),
                                Optional.of(record.anchor()))),
                () -> detail);
    }

    private static StationRow ofPart(
            AnchorRecord anchor, PartRecord record, Optional<Exposure> exposure, String margin, Surroundings around) {
        return new StationRow(
                margin + record.part().label() + "  " + About.hardware(record.part(), around),
                margin.isEmpty() ? Style.STRONG : Style.NORMAL,
                ConditionWords.told(record.state().condition(), around.phrases())
                        + (record.state().contradictory() ? " " + around.say("station.disagree") : "")
                        + record.state()
                                .seenOn()
                                .map(date -> "  " + date.print())
                                .orElse("")
                        + DueMark.of(record, exposure, around),
                Looks.style(record.state().condition()),
                Optional.of(anchor),
                Acts.thing(
                        ThingBody.of(record.part()),
                        Contents.NOTHING,
                        new Go.EditPart(
                                record.part().uid(),
                                record.part().anchor(),
                                record.part().order(),
                                Optional.of(record.part()))),
                () -> {
                    List<Paragraph> text = new ArrayList<>(About.part(record, around));
                    text.addAll(DueMark.reasons(record, exposure, around));
                    text.addAll(StrengthOverYears.of(record, around));
                    return text;
                });
    }

    private static StationRow ofInspection(
            CanyonRecord canyon, PartRecord part, Entry<Inspection> entry, Surroundings around) {
        Fate fate = Fate.of(entry, part, around.phrases());
        String line = AboutEntry.line(entry.content(), around);
        Style style = fate.counts() ? Looks.style(entry.content().afterwards()) : Style.FAINT;
        return new StationRow(
                line,
                style,
                fate.word(),
                Style.FAINT,
                Optional.empty(),
                Acts.entry(
                        entry,
                        Optional.of(new Go.CorrectInspection(part, entry, canyon.countingRounds())),
                        part.part().label() + ", " + line,
                        around),
                () -> AboutEntry.inspection(entry, part, canyon, around));
    }

    private static StationRow ofNote(StationRecord station, Entry<RiggingNote> entry, Surroundings around) {
        RiggingNote note = entry.content();
        Fate fate = Fate.ofNote(entry, station.notes(), around.phrases());
        String name = around.say("station.note", note.on().print(), About.name(around, note.by()));
        List<Paragraph> detail = new ArrayList<>(About.note(entry, around));
        detail.addAll(AboutEntry.fate(fate));
        return new StationRow(
                name,
                fate.counts() ? Style.NORMAL : Style.FAINT,
                fate.word(),
                Style.FAINT,
                Optional.empty(),
                Acts.entry(
                        entry, Optional.of(new Go.CorrectNote(station.station().name(), entry)), name, around),
                () -> detail);
    }

    private static StationRow ofAnalysis(
            StationRecord station, Entry<RigAnalysis> entry, Optional<KeptRig> rig, Surroundings around) {
        boolean stale = station.isOld(entry.content());
        Fate fate = Fate.ofAnalysis(entry, station.analyses(), around.phrases());
        String called = rig.map(kept -> called(kept, around)).orElse("");
        String by = About.name(around, entry.content().by());
        String day = entry.content().on().print();
        String name = called.isBlank()
                ? around.say("station.analysis", day, by)
                : around.say("station.analysis_named", called, day, by);
        return new StationRow(
                name,
                fate.counts() ? Style.NORMAL : Style.FAINT,
                !fate.counts() ? fate.word() : stale ? around.say("station.stale") : "",
                fate.counts() && stale ? Style.MIND : Style.FAINT,
                Optional.empty(),
                Acts.entry(entry, Optional.empty(), name, around),
                () -> {
                    List<Paragraph> detail = new ArrayList<>(AboutEntry.fate(fate));
                    detail.addAll(AboutAnalysis.of(station, entry, rig, around));
                    return detail;
                });
    }

    /** By its name, or by its layout where it has none: of two of one day one has to be told from the other. */
    private static String called(KeptRig rig, Surroundings around) {
        String name = rig.input().name();
        return name.isBlank()
                ? around.say("rig.kind." + rig.input().rig().kind().word())
                : name;
    }

    /** The same with another detail that holds a private note, and a sign that there is one. */
    StationRow withPrivateNote(List<Paragraph> whole, Surroundings around) {
        String marked = around.say("local.mark") + " " + state;
        return new StationRow(name, nameStyle, marked, stateStyle, anchor, acts, () -> whole);
    }

    /** Paints it on one line; the state goes before the name where both do not fit, and loses its end before its beginning. */
    void paint(Canvas line, Style style) {
        boolean chosen = style == Style.SELECTED;
        String shown = Width.cut(state, Math.max(0, line.columns() - LEAST_NAME - 2));
        line.fit(0, 0, Math.max(0, line.columns() - Width.of(shown) - 2), name, chosen ? style : nameStyle);
        line.put(0, line.columns() - Width.of(shown), shown, chosen ? style : stateStyle);
    }
}
