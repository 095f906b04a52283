package thalweg.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import thalweg.ledger.Uid;
import thalweg.logbook.Entry;
import thalweg.logbook.InventoryFingerprint;
import thalweg.logbook.RigAnalysis;
import thalweg.logbook.StationRecord;

/** The latest rig analysis in full, never without what it assumes and leaves out; older ones are counted. */
final class AnalysisPart {

    private final Wording wording;
    private final Map<Uid, AnalysisFigures> figures;
    private final FigureTables tables;

    AnalysisPart(Wording wording, Map<Uid, AnalysisFigures> figures) {
        this.wording = wording;
        this.figures = Map.copyOf(figures);
        this.tables = new FigureTables(wording);
    }

    Optional<Section> of(String station, StationRecord record) {
        List<Entry<RigAnalysis>> analyses = record.countingAnalyses();
        if (analyses.isEmpty()) {
            return Optional.empty();
        }
        Entry<RigAnalysis> latest = analyses.get(0);
        String id = station + "-analysis";
        AnalysisFigures known = figures.get(latest.uid());
        List<Block> blocks = new ArrayList<>();
        if (known == null) {
            blocks.add(new Block.Paragraph(wording.toned(
                    Tone.CAUTION,
                    "sheet.analysis.unreadable",
                    wording.ages().ago(latest.content().on()))));
        } else {
            blocks.addAll(inFull(id, known, changes(known, latest.content(), record)));
        }
        if (analyses.size() > 1) {
            List<Words> others = analyses.subList(1, analyses.size()).stream()
                    .map(other -> inBrief(other, record))
                    .toList();
            blocks.add(new Block.Facts(List.of(wording.fact("sheet.analyses.others", others))));
        }
        return Optional.of(Section.of(id, wording.say("sheet.analysis"), blocks));
    }

    /** The latest in one line; empty where there is none. */
    Optional<Words> latestInBrief(StationRecord record) {
        return record.countingAnalyses().stream().findFirst().map(latest -> inBrief(latest, record));
    }

    /** By its name: two of one day would look alike otherwise. */
    private Words inBrief(Entry<RigAnalysis> entry, StationRecord record) {
        AnalysisFigures known = figures.get(entry.uid());
        String day = wording.ages().ago(entry.content().on());
        if (known == null) {
            return wording.toned(Tone.CAUTION, "sheet.analyses.other.unreadable", day);
        }
        boolean stale = !changes(known, entry.content(), record).isEmpty();
        String name = known.rig().isBlank() ? wording.say("sheet.analysis.rig.unnamed") : known.rig();
        return wording.toned(
                stale ? Tone.CAUTION : Tone.QUIET,
                stale ? "sheet.analyses.other.stale" : "sheet.analyses.other",
                name,
                known.layout(),
                day);
    }

    private List<Block> inFull(String id, AnalysisFigures known, List<String> changes) {
        List<Block> blocks = new ArrayList<>();
        if (!changes.isEmpty()) {
            List<Words> lines = new ArrayList<>();
            lines.add(wording.toned(Tone.CAUTION, "sheet.analysis.stale.since"));
            changes.forEach(change -> lines.add(Words.of(change, Tone.CAUTION)));
            blocks.add(new Block.Notice(wording.say("sheet.analysis.stale"), lines));
        }
        if (!known.remarks().isEmpty()) {
            boolean grave = known.remarks().stream().anyMatch(PointRemarks.Remark::grave);
            blocks.add(new Block.Notice(
                    wording.say(grave ? "sheet.analysis.points_bad" : "sheet.analysis.points_now"),
                    known.remarks().stream()
                            .map(remark -> Words.of(remark.text(), remark.grave() ? Tone.UNSAFE : Tone.CAUTION))
                            .toList()));
        }
        blocks.add(new Block.Notice(
                wording.say("sheet.analysis.cautions"),
                List.of(
                        wording.caution("sheet.analysis.caution.model"),
                        wording.caution("sheet.analysis.caution.peak"),
                        wording.caution("sheet.analysis.caution.left_out"))));
        blocks.add(tables.basis(known));
        blocks.add(tables.points(known));
        tables.losses(known).ifPresent(blocks::add);
        tables.safety(known).ifPresent(blocks::add);
        tables.strengths(known).ifPresent(blocks::add);
        tables.checks(known).ifPresent(blocks::add);
        blocks.add(new Block.Picture(id + "-picture", wording.say("sheet.analysis.picture"), known.drawing()));
        return blocks;
    }

    /**
     * What has changed since, in words. The inventory is held against the analysis here too: figures that came without
     * a word about changes must not make an old analysis look fresh.
     */
    private List<String> changes(AnalysisFigures known, RigAnalysis analysis, StationRecord record) {
        if (!known.staleChanges().isEmpty()) {
            return known.staleChanges();
        }
        return analysis.inventory().changesTo(record.inventory()).stream()
                .map(change -> change(change, record))
                .toList();
    }

    private String change(InventoryFingerprint.Change change, StationRecord record) {
        String label = record.part(change.part())
                .map(part -> part.part().label())
                .orElseGet(() -> wording.say("sheet.analysis.change.gone"));
        return wording.say("sheet.analysis.change." + change.kind().name().toLowerCase(Locale.ROOT), label);
    }
}
