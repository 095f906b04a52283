package thalweg.sheet;

import java.util.List;
import java.util.Optional;
import thalweg.drawing.Drawing;
import thalweg.drawing.Ink;
import thalweg.drawing.Shape;
import thalweg.drawing.Spot;
import thalweg.ledger.Uid;
import thalweg.route.PartialDate;
import thalweg.units.Angle;
import thalweg.units.Force;
import thalweg.units.Length;

/** Figures of an analysis as a calculator might give them; the numbers are made up and only have the right form. */
final class SampleFigures {

    private SampleFigures() {}

    static AnalysisFigures of(Uid entry) {
        return of(entry, List.of("sling round the pine: changed"));
    }

    static AnalysisFigures of(Uid entry, List<String> staleChanges) {
        return new AnalysisFigures(
                entry,
                PartialDate.parse("2026-09-12"),
                "Ana Kovač",
                "0.1.0",
                "pine and chockstone",
                "focused",
                "90 kg straight down, sway 15° to both sides",
                List.of(
                        new AnalysisFigures.PointFigures(
                                "pine", Force.kilonewtons(0.47), Force.kilonewtons(0.63), new Angle(-15), false, 0.51),
                        new AnalysisFigures.PointFigures(
                                "chockstone",
                                Force.kilonewtons(0.46),
                                Force.kilonewtons(0.61),
                                new Angle(15),
                                true,
                                0.49)),
                Optional.of(new Angle(51.2)),
                Optional.of(new Angle(53.4)),
                List.of(
                        new LossFigures("pine", Optional.empty()),
                        new LossFigures(
                                "chockstone",
                                Optional.of(new LossFigures.After(
                                        Optional.empty(),
                                        "The strength of the pine is unknown.",
                                        new Length(0.17),
                                        new Length(0.21),
                                        List.of(new LossFigures.Peak(
                                                "pine",
                                                Force.kilonewtons(1.9),
                                                Force.kilonewtons(1.5),
                                                Force.kilonewtons(2.6))),
                                        true,
                                        true)))),
                List.of(
                        new AnalysisFigures.CheckLine("E", "good", "The larger share is 51 % at the aim."),
                        new AnalysisFigures.CheckLine("A", "good", "The strands stand at 51°.")),
                List.of(
                        new AnalysisFigures.SafetyLine(
                                "pine", "19.0 times, with the load toward -15°", "8.11 times, when chockstone goes"),
                        new AnalysisFigures.SafetyLine(
                                "pine leg",
                                "unknown (how much strength the knots leave is not known)",
                                "unknown (how much strength the knots leave is not known)")),
                List.of("pine: 25.0 kN as stated, 12.5 kN left: condition 0.5, our choice: found worn."),
                "4.05 m of webbing or cord in all, connectors: 3",
                List.of(
                        new AnalysisFigures.Assumption("strands", "2"),
                        new AnalysisFigures.Assumption("load_spread", "")),
                drawing(),
                List.of(new PointRemarks.Remark("chockstone: ? doubtful, 2026-09-12", false)),
                staleChanges);
    }

    static Drawing drawing() {
        Spot left = new Spot(-0.3, 0);
        Spot right = new Spot(0.3, 0.1);
        Spot master = new Spot(0, -0.6);
        return new Drawing(
                List.of(
                        new Shape.Line(new Spot(-0.5, 0.05), new Spot(0.5, 0.05), Ink.FAINT, false, false),
                        new Shape.Line(left, master, Ink.MAIN, false, false),
                        new Shape.Line(right, master, Ink.MAIN, true, false),
                        new Shape.Line(master, new Spot(0, -0.95), Ink.FORCE, false, true),
                        new Shape.Line(left, new Spot(-0.2, -0.2), Ink.FORCE, false, true),
                        new Shape.Polygon(
                                List.of(new Spot(-0.33, -0.03), new Spot(-0.27, -0.03), new Spot(-0.3, 0.04)),
                                Ink.STRONG,
                                true),
                        new Shape.Polygon(
                                List.of(new Spot(0.27, 0.07), new Spot(0.33, 0.07), new Spot(0.3, 0.14)),
                                Ink.CAUTION,
                                false),
                        new Shape.Label(new Spot(-0.36, 0), "pine 0.47 kN", Ink.STRONG, Shape.Side.END),
                        new Shape.Label(new Spot(0.36, 0.1), "chockstone 0.46 kN", Ink.CAUTION, Shape.Side.START),
                        new Shape.Label(new Spot(0, -1.02), "90 kg", Ink.FORCE, Shape.Side.MIDDLE)),
                "Two points, the left one a little lower; a strand from each to the master 60 cm below.");
    }
}
