package thalweg.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import thalweg.ledger.Uid;
import thalweg.logbook.AnchorRecord;
import thalweg.logbook.Condition;
import thalweg.logbook.Entry;
import thalweg.logbook.InventoryFingerprint;
import thalweg.logbook.PartRecord;
import thalweg.logbook.RigAnalysis;
import thalweg.logbook.StationRecord;
import thalweg.route.AnchorRole;
import thalweg.route.Part;
import thalweg.route.PartKind;
import thalweg.route.PartialDate;

class AnalysisPartTest {

    private final Things things = new Things();
    private final Part tree = things.part("larch", PartKind.TREE);
    private final Part sling = things.part("blue sling", PartKind.SLING);

    private StationRecord station(InventoryFingerprint then, PartRecord... now) {
        AnchorRecord anchor = things.anchor(AnchorRole.MAIN, "", "", now);
        Entry<RigAnalysis> analysis = things.entry(
                new RigAnalysis(things.uid(), PartialDate.parse("2026-09-12"), "", "0.1.0", "{}", "{}", then));
        return new StationRecord(
                things.station("Ledge", Optional.empty(), "", Map.of()), List.of(anchor), List.of(), List.of(analysis));
    }

    private static List<String> texts(StationRecord station, Map<Uid, AnalysisFigures> figures) {
        Wording wording = new Wording(SheetPhrases.ENGLISH, SampleSheets.USUAL);
        return SheetTexts.of(new AnalysisPart(wording, figures)
                .of("station", station)
                .orElseThrow()
                .blocks());
    }

    private static Map<Uid, AnalysisFigures> figures(StationRecord station, List<String> staleChanges) {
        Uid entry = station.analyses().get(0).uid();
        return Map.of(entry, SampleFigures.of(entry, staleChanges));
    }

    @Test
    void changesComeBeforeCautionsAndCautionsBeforeFigures() {
        StationRecord station = station(InventoryFingerprint.of(List.of(things.record(tree))), things.record(tree));

        assertThat(texts(station, figures(station, List.of("larch: changed"))))
                .containsSubsequence(
                        "Out of date",
                        "This analysis was made before these parts changed:",
                        "larch: changed",
                        "Figures of a model",
                        "Assumed, because nobody stated it: strands in a leg = 2",
                        "Assumed, because nobody stated it: spread of the belief in the load, value not kept",
                        "Force on each point",
                        "pine",
                        "0.47 kN",
                        "51 %",
                        "0.63 kN",
                        "with the load 15° to the left, facing the anchor",
                        "E, equalised",
                        "good");
    }

    @Test
    void anAnalysisOfTheInventoryAsItIsIsNotCalledOutOfDate() {
        StationRecord station = station(InventoryFingerprint.of(List.of(things.record(tree))), things.record(tree));

        assertThat(texts(station, figures(station, List.of()))).doesNotContain("Out of date");
    }

    @Test
    void changesThatNobodyNamedAreFoundAllTheSame() {
        PartRecord asItWas = things.record(tree);
        PartRecord worse = things.record(tree, things.seen(tree, "2026-10-01", "A", Condition.UNSAFE, ""));
        Part removed = things.part("ring", PartKind.RING);
        StationRecord station =
                station(InventoryFingerprint.of(List.of(asItWas, things.record(removed))), worse, things.record(sling));

        assertThat(texts(station, figures(station, List.of())))
                .contains(
                        "Out of date",
                        "larch: changed",
                        "blue sling: added",
                        "a part that is no longer entered: removed");
    }

    @Test
    void anAnalysisWithoutFiguresIsNotPassedOverInSilence() {
        StationRecord station = station(InventoryFingerprint.of(List.of()));

        assertThat(texts(station, Map.of()))
                .containsExactly("The latest rig analysis (2026-09-12, 2 months ago) cannot be shown:"
                        + " its figures could not be read.");
    }
}
