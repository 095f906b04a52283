package thalweg.exchange.json;

import java.util.List;
import java.util.Optional;
import thalweg.json.FieldWriter;
import thalweg.json.Json;
import thalweg.rig.BestFocus;
import thalweg.rig.CascadeOdds;
import thalweg.rig.PeakRange;
import thalweg.rig.PointForce;
import thalweg.rig.RigStudy;
import thalweg.rig.Share95;

/** Writes what of a study goes beyond the answer. */
final class RigStudyText {

    private static final int DECIMALS = 6;

    private static final int ODDS_DECIMALS = 9;

    private static final int PEAK_DECIMALS = 4;

    private static final String RANGE_NOTE =
            "model peaks, load at rest, dry, undamped, over the stiffness low, nominal and"
                    + " high, 0, 10 and 20 mm of slack in the legs that survive, the aim and both ends of the sway; a bounce, slip"
                    + " or a sharp edge is in none of them";

    private static final String NOTE = "a comparison of layouts under the same beliefs, never a promise; points fail"
            + " independently of one another, strands do not fail, hidden defects are excluded";

    private RigStudyText() {}

    static void write(RigStudy study, FieldWriter out) {
        study.bestFocus().ifPresent(best -> bestFocus(best, out));
        study.cascade().ifPresent(odds -> cascade(odds, out));
        study.comparison().ifPresent(comparison -> out.put("compare", RigComparisonText.of(comparison)));
        study.peakRange().ifPresent(range -> peaks(range, out));
    }

    private static void peaks(PeakRange range, FieldWriter out) {
        FieldWriter losses = Json.fields();
        for (PeakRange.Loss loss : range.losses()) {
            FieldWriter points = Json.fields();
            for (PeakRange.OnPoint point : loss.points()) {
                points.put(
                        point.point(),
                        new Json.Items(List.of(
                                Json.rounded(point.low().inKilonewtons(), PEAK_DECIMALS),
                                Json.rounded(point.high().inKilonewtons(), PEAK_DECIMALS))));
            }
            losses.put(
                    loss.lost(),
                    Json.fields()
                            .put("peak_kN", points.done())
                            .put("complete", Json.of(loss.complete()))
                            .put("still_rising", Json.of(loss.rising()))
                            .done());
        }
        out.put("peak_range", losses.done()).put("peak_range_note", RANGE_NOTE);
    }

    private static void cascade(CascadeOdds odds, FieldWriter out) {
        if (odds.unknown().isPresent()) {
            out.put("cascade", Json.NOTHING)
                    .put("cascade_why", odds.unknown().get().toString());
            return;
        }
        FieldWriter fields = Json.fields().put("trials", odds.trials()).put("seed", odds.seed());
        odds.anyPointFails().ifPresent(share -> fields.put("any_point_fails", share(share)));
        odds.everythingLost().ifPresent(share -> fields.put("all_lost", share(share)));
        fields.put("direction_error", Json.rounded(odds.directionError(), DECIMALS));
        if (odds.rising()) {
            fields.put("still_rising", Json.of(true));
        }
        out.put("cascade", fields.put("note", NOTE).done());
    }

    private static Json share(Share95 share) {
        return Json.fields()
                .put("count", share.count())
                .put("p", Json.rounded(share.share(), ODDS_DECIMALS))
                .put("low", Json.rounded(share.low(), ODDS_DECIMALS))
                .put("high", Json.rounded(share.high(), ODDS_DECIMALS))
                .put("in_words", share.print())
                .done();
    }

    private static void bestFocus(BestFocus best, FieldWriter out) {
        Optional<BestFocus.Found> found = best.found();
        if (found.isEmpty()) {
            out.put("best_focus", Json.NOTHING).put("best_focus_why", best.why());
            return;
        }
        FieldWriter shares = Json.fields();
        for (PointForce force : found.get().shares()) {
            shares.put(force.point(), Json.rounded(force.share(), DECIMALS));
        }
        out.put(
                "best_focus",
                Json.fields()
                        .put("focus", RigAnswerText.place(found.get().focus()))
                        .put("share", shares.done())
                        .put(
                                "least_safety_ratio",
                                RigSafetyText.ratio(found.get().leastRatio()))
                        .put(
                                "least_safety_ratio_as_given",
                                RigSafetyText.ratio(found.get().ratioAsGiven()))
                        .put("why", best.why())
                        .done());
    }
}
