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
import thalweg.tui.core.Style;
import thalweg.tui.core.Surroundings;
import thalweg.tui.widget.Paragraph;

/** An analysis that was kept, as text to read. */
final class AboutAnalysis {

    private AboutAnalysis() {}

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
        for (InventoryFingerprint.Change change : analysis.inventory().changesTo(station.inventory())) {
            String part = station.part(change.part())
                    .map(record -> record.part().label())
                    .orElse(change.part().tail());
            text.add(Paragraph.of(
                    around.say("rig.change." + change.kind().name().toLowerCase(Locale.ROOT), part), Style.MIND));
        }
        text.addAll(rig.map(kept -> RigText.of(kept.answer(), Optional.empty(), around))
                .orElseGet(() -> List.of(Paragraph.of(around.say("rig.unreadable"), Style.MIND))));
        return text;
    }
}
