package thalweg.sheet;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import thalweg.ledger.Uid;
import thalweg.logbook.CanyonRecord;
import thalweg.logbook.Entry;
import thalweg.logbook.InventoryFingerprint;
import thalweg.logbook.LineRecord;
import thalweg.logbook.NoteText;
import thalweg.logbook.RigAnalysis;
import thalweg.logbook.StationRecord;
import thalweg.place.PositionText;
import thalweg.route.AmericanGrade;
import thalweg.route.Canyon;
import thalweg.route.CanyonText;
import thalweg.route.FrenchGrade;
import thalweg.route.ObstacleKind;
import thalweg.route.PartialDate;
import thalweg.route.Prose;
import thalweg.route.Side;
import thalweg.route.StationText;
import thalweg.route.Times;

/** An invented canyon of which everything is known that can be, and some of it bad, old or contradictory. */
final class FullCanyon {

    private final Things things = new Things();
    private final FullAnchors anchors = new FullAnchors(things);
    private final Entry<RigAnalysis> analysis;
    private final CanyonRecord record;

    FullCanyon() {
        LineRecord upper = Things.at(
                things.place(2, ObstacleKind.DROP, "Black Pot", "120 m", "18 m", "Cold all year.", upper()),
                "geo:42.124001,-0.055002;u=15");
        StationRecord lower = lower();
        this.analysis = lower.analyses().get(0);
        this.record = new CanyonRecord(
                canyon(),
                List.of(
                        things.place(1, ObstacleKind.WALK, "", "0 m", "", "Gravel bed, 10 min."),
                        upper,
                        things.place(3, ObstacleKind.HAZARD, "Siphon", "240 m", "", "Keep to the left wall."),
                        Things.at(
                                things.place(
                                        4, ObstacleKind.ESCAPE, "Goat Ledge", "300 m", "", "Climb out on the right."),
                                "42.125003, -0.056004"),
                        things.place(5, ObstacleKind.DROP, "", "410 m", "38.5 m", lower, unknown()),
                        things.place(6, ObstacleKind.HANDLINE, "", "", "")));
    }

    CanyonRecord record() {
        return record;
    }

    Map<Uid, AnalysisFigures> figures() {
        return Map.of(analysis.uid(), SampleFigures.of(analysis.uid()));
    }

    private Canyon canyon() {
        return new Canyon(
                things.uid(),
                "Żółta Szczelina",
                List.of("Barranco Amarillo", "黄色い谷"),
                "High Example",
                "Nowhere",
                Optional.of(FrenchGrade.parse("v4 a3 III")),
                Optional.of(AmericanGrade.parse("3 B III R")),
                Optional.of(PositionText.parse("geo:42.123456,-0.054321;u=10")),
                new Times(Optional.of(45), Optional.of(210), Optional.of(60)),
                Optional.empty(),
                new Prose<CanyonText>(Map.of(
                        CanyonText.ROPES, "Two of 45 m.",
                        CanyonText.APPROACH, "Follow the red fence.\nCross the footbridge, then up.",
                        CanyonText.EXIT, "Path on the left bank.",
                        CanyonText.SEASON, "May to October.",
                        CanyonText.CATCHMENT, "9 km2 of bare rock: rises within 20 minutes.",
                        CanyonText.ACCESS, "Closed from 1 February to 30 June while vultures nest.",
                        CanyonText.EMERGENCY, "Hut at the footbridge has a radio.",
                        CanyonText.SOURCES, "Made up for practice.",
                        CanyonText.NOTES, "Tell the farmer.")),
                true);
    }

    private StationRecord upper() {
        return new StationRecord(
                things.station(
                        "Above the pot",
                        Optional.of(Side.LEFT),
                        "20 m",
                        Map.of(
                                StationText.FINDING, "Two metres above the lip, at head height.",
                                StationText.RUB_POINTS, "Lip at 3 m: pad it.",
                                StationText.LANDING, "Waist-deep pool.",
                                StationText.NOTES, "Stance for four.")),
                List.of(anchors.main(), anchors.highWater()),
                List.of(),
                List.of());
    }

    private StationRecord lower() {
        StationRecord plain = new StationRecord(
                Things.at(
                        things.station("Hanging stance", Optional.of(Side.CENTRE), "40 m", Map.of()),
                        "42.126005, -0.057006"),
                List.of(anchors.tree()),
                List.of(
                        things.note(
                                "2026-09-12",
                                "Ana Kovač",
                                Map.of(
                                        NoteText.TECHNIQUE, "Single strand, released from above.",
                                        NoteText.ROPE_SET, "45 m and 45 m.",
                                        NoteText.PULL_DIRECTION, "Out from the wall, from the gravel bank.",
                                        NoteText.EDGE_PROTECTION, "Pad at the second edge.",
                                        NoteText.BACK_UP, "To the chockstone, until the last one.",
                                        NoteText.LANDING, "Dry ledge.",
                                        NoteText.TROUBLE, "Rope jammed once: knot in the crack.",
                                        NoteText.OTHER, "Leave 2 m of tail.")),
                        things.note("2019", "", Map.of(NoteText.TECHNIQUE, "Double strand."))),
                List.of());
        RigAnalysis latest = new RigAnalysis(
                plain.station().uid(),
                PartialDate.parse("2026-09-12"),
                "Ana Kovač",
                "0.1.0",
                "{}",
                "{}",
                plain.inventory());
        RigAnalysis older = new RigAnalysis(
                plain.station().uid(),
                PartialDate.parse("2020-05"),
                "",
                "0.0.1",
                "{}",
                "{}",
                new InventoryFingerprint(Map.of()));
        return new StationRecord(
                plain.station(), plain.anchors(), plain.notes(), List.of(things.entry(latest), things.entry(older)));
    }

    private StationRecord unknown() {
        return new StationRecord(
                things.station("Left variant", Optional.empty(), "", Map.of()), List.of(), List.of(), List.of());
    }
}
