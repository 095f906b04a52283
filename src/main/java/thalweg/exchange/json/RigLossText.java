package thalweg.exchange.json;

import java.util.List;
import java.util.Optional;
import thalweg.json.FieldWriter;
import thalweg.json.Json;
import thalweg.rig.Aftermath;
import thalweg.rig.FrictionRange;
import thalweg.rig.PeakForces;
import thalweg.rig.PointLoss;
import thalweg.rig.RigAnswer;
import thalweg.rig.StrandCut;

/** Writes what an answer says about the loss of points, the cut of strands, and friction. */
final class RigLossText {

    /** A peak is good to a part in a hundred; more digits only repeat what the machine did. */
    private static final int PEAK_DECIMALS = 4;

    private static final int DECIMALS = 6;

    private static final String NOTHING_LEFT = "nothing holds the master any more";

    private static final String PEAK_NOTE =
            "model peaks within 2 s, load at rest, dry, undamped; uneven tying, a slipping"
                    + " knot or a bounce can give two to three times as much";

    private RigLossText() {}

    static void write(RigAnswer answer, FieldWriter out) {
        FieldWriter losses = Json.fields();
        answer.losses().forEach(loss -> losses.put(loss.point(), loss(loss)));
        out.put("losses", losses.done());
        out.put("peak_note", PEAK_NOTE);
        out.put(
                "cuts",
                new Json.Items(answer.cuts().stream().map(RigLossText::cut).toList()));
        answer.friction().ifPresent(friction -> range(friction, out));
    }

    private static Json loss(PointLoss loss) {
        FieldWriter fields = Json.fields().put("held", Json.of(loss.held()));
        if (loss.aftermath().isEmpty()) {
            for (String key : List.of("within_strength", "free_travel_m", "drop_m", "swing_m", "peak_kN")) {
                fields.put(key, Json.NOTHING);
            }
            return fields.put("why", NOTHING_LEFT).done();
        }
        Aftermath after = loss.aftermath().get();
        fields.put(
                        "within_strength",
                        after.within().verdict().<Json>map(Json::of).orElse(Json.NOTHING))
                .put("within_strength_why", after.within().why())
                .put("free_travel_m", number(after.freeTravel().metres()))
                .put("drop_m", number(after.drop().metres()))
                .put("swing_m", number(after.swing().metres()));
        peaks(after.peaks(), fields);
        return fields.done();
    }

    private static void peaks(Optional<PeakForces> peaks, FieldWriter out) {
        if (peaks.isEmpty()) {
            out.put("peak_kN", Json.NOTHING).put("peak_kN_why", "the motion is too fast to be followed");
            return;
        }
        FieldWriter points = Json.fields();
        peaks.get()
                .points()
                .forEach(peak -> points.put(peak.point(), peak(peak.force().inKilonewtons())));
        out.put("peak_kN", points.done());
        if (peaks.get().rising()) {
            out.put("still_rising", Json.of(true));
        }
    }

    private static Json cut(StrandCut cut) {
        FieldWriter fields = Json.fields().put("strand", cut.strand()).put("held", Json.of(cut.held()));
        return fields.putKnown("as_loss_of", cut.asLossOf().map(Json::of)).done();
    }

    private static void range(FrictionRange friction, FieldWriter out) {
        if (!friction.known()) {
            out.put("share_range", Json.NOTHING).put("share_range_why", friction.why());
            return;
        }
        FieldWriter fields = Json.fields();
        friction.shares()
                .forEach(range -> fields.put(
                        range.point(), new Json.Items(List.of(number(range.least()), number(range.most())))));
        out.put("share_range", fields.done());
    }

    private static Json number(double value) {
        return Json.rounded(value, DECIMALS);
    }

    private static Json peak(double kilonewtons) {
        return Json.rounded(kilonewtons, PEAK_DECIMALS);
    }
}
