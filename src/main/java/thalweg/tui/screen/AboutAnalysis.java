package thalweg.tui.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import thalweg.logbook.Entry;
import thalweg.logbook.InventoryFingerprint;
import thalweg.logbook.RigAnalysis;
import thalweg.logbook.StationRecord;
import thalweg.rig.KeptRig;
import thalweg.sheet.PointRemarks;
import thalweg.tui.core.Style;
import thalweg.tui.core.Surroundings;
import thalweg.tui.widget.Paragraph;

/** An analysis that was kept, as text to read. */
final class AboutAnalysis {

    private AboutAnalysis() {}

    private static List<Paragraph> remarks(List<PointRemarks.Remark> remarks, Surroundings around) {
        List<Paragraph> text = new ArrayList<>();
        if (!remarks.isEmpty()) {
            boolean grave = remarks.stream().anyMatch(PointRemarks.Remark::grave);
            text.add(Paragraph.of(
                    around.say(grave ? "rig.points_bad" : "rig.points_now"), grave ? Style.BAD : Style.MIND));
            remarks.forEach(
                    remark -> text.add(new Paragraph(2, remark.text(), remark.grave() ? Style.BAD : Style.MIND)));
        }
        return text;
    }

    static List<Paragraph> of(
            StationRecord station, Entry<RigAnalysis> entry, Optional<KeptRig> rig, Surroundings around) {
        RigAnalysis analysis = entry.content();
        List<Paragraph> text = new ArrayList<>();
        text.add(Paragraph.of(
                around.say(
                        "about.analysis",
                        Looks.ago(around, analysis.on()),
                        About.name(around, analysis.by()),
                        analysis.program()),
                Style.STRONG));
        List<InventoryFingerprint.Change> changes = analysis.inventory().changesTo(station.inventory());
        if (!changes.isEmpty()) {
            text.add(Paragraph.of(around.say("about.out_of_date"), Style.MIND));
        }
        for (InventoryFingerprint.Change change : changes) {
            String part = station.part(change.part())
                    .map(record -> record.part().label())
                    .orElse(change.part().tail());
            text.add(Paragraph.of(
                    around.say("rig.change." + change.kind().name().toLowerCase(Locale.ROOT), part), Style.MIND));
        }
        rig.ifPresent(kept ->
                text.addAll(remarks(PointRemarks.of(kept.input(), station, around.phrases(), around.units()), around)));
        text.addAll(rig.map(kept -> RigText.of(kept.answer(), PeakText.ofKept(), around))
                .orElseGet(() -> List.of(Paragraph.of(around.say("rig.unreadable"), Style.MIND))));
        return text;
    }
}
