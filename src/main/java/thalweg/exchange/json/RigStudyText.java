package thalweg.exchange.json;

import java.util.Optional;
import thalweg.json.FieldWriter;
import thalweg.json.Json;
import thalweg.rig.BestFocus;
import thalweg.rig.PointForce;
import thalweg.rig.RigStudy;

/** Writes what of a study goes beyond the answer. */
final class RigStudyText {

    private static final int DECIMALS = 6;

    private RigStudyText() {}

    static void write(RigStudy study, FieldWriter out) {
        study.bestFocus().ifPresent(best -> bestFocus(best, out));
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
