package thalweg.sheet;

import java.util.List;
import java.util.Optional;
import thalweg.drawing.Drawing;
import thalweg.ledger.Uid;
import thalweg.route.PartialDate;
import thalweg.units.Angle;
import thalweg.units.Force;
import thalweg.units.Length;

/** Figures of an analysis with a word of its own in every text. */
final class RandomFigures {

    private RandomFigures() {}

    static AnalysisFigures of(Uid entry, boolean shown, Marks marks) {
        return new AnalysisFigures(
                entry,
                PartialDate.parse("2026"),
                marks.shownIf(shown),
                marks.shownIf(shown),
                marks.shownIf(shown),
                marks.shownIf(shown),
                marks.shownIf(shown),
                List.of(new AnalysisFigures.PointFigures(
                        marks.shownIf(shown), Force.kilonewtons(1), Force.kilonewtons(2), new Angle(0), false, 1)),
                Optional.empty(),
                Optional.empty(),
                List.of(new LossFigures(
                        marks.shownIf(shown),
                        Optional.of(new LossFigures.After(
                                Optional.empty(),
                                marks.shownIf(shown),
                                new Length(0.1),
                                new Length(0.1),
                                List.of(new LossFigures.Peak(
                                        marks.shownIf(shown),
                                        Force.kilonewtons(1),
                                        Force.kilonewtons(0.9),
                                        Force.kilonewtons(1.2))),
                                false,
                                false)))),
                List.of(new AnalysisFigures.CheckLine(
                        marks.shownIf(shown), marks.shownIf(shown), marks.shownIf(shown))),
                List.of(new AnalysisFigures.SafetyLine(
                        marks.shownIf(shown), marks.shownIf(shown), marks.shownIf(shown))),
                List.of(marks.shownIf(shown)),
                marks.shownIf(shown),
                List.of(new AnalysisFigures.Assumption(marks.shownIf(shown), marks.shownIf(shown))),
                new Drawing(SampleFigures.drawing().shapes(), marks.shownIf(shown)),
                List.of(new PointRemarks.Remark(marks.shownIf(shown), true)),
                List.of(marks.shownIf(shown)));
    }
}
