package thalweg.exchange.json;

import java.util.List;
import thalweg.json.FieldWriter;
import thalweg.json.Json;
import thalweg.rig.RigAnswer;
import thalweg.rig.SlungFigures;

/** Writes what slings round points bear. */
final class RigSlingText {

    private static final int DECIMALS = 6;

    private RigSlingText() {}

    /** Sets the key for slings, unless there is none. */
    static void write(RigAnswer answer, FieldWriter out) {
        List<SlungFigures> slings = SlungFigures.of(answer);
        if (slings.isEmpty()) {
            return;
        }
        FieldWriter points = Json.fields();
        slings.forEach(sling -> points.put(sling.point().name(), json(sling)));
        out.put("slings", points.done());
    }

    private static Json json(SlungFigures slung) {
        FieldWriter fields = Json.fields()
                .put("tie", slung.sling().tie())
                .put("strands_a_side", slung.sling().tie().strandsASide())
                .put(
                        "side_kN",
                        new Json.Items(slung.sides().stream()
                                .map(side -> Json.rounded(side.inKilonewtons(), DECIMALS))
                                .toList()));
        slung.angle().ifPresent(angle -> fields.put("angle_deg", Json.rounded(angle.degrees(), DECIMALS)));
        slung.widest().ifPresent(angle -> fields.put("widest_angle_deg", Json.rounded(angle.degrees(), DECIMALS)));
        return fields.done();
    }
}
