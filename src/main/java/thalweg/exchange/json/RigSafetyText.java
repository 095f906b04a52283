package thalweg.exchange.json;

import java.util.Set;
import java.util.stream.Collectors;
import thalweg.json.FieldWriter;
import thalweg.json.Json;
import thalweg.rig.PartSafety;
import thalweg.rig.RigAnswer;

/** Writes how many times each part would hold the largest forces on it. */
final class RigSafetyText {

    /** A ratio is never rounded up, and says no more digits than the peak that it rests on. */
    private static final int DECIMALS = 3;

    private RigSafetyText() {}

    /**
     * All parts.
     *
     * @param chains whether what was taken off each strength is written as well; what is kept with a station goes without,
     *     since its input says the same
     */
    static Json of(RigAnswer answer, boolean chains) {
        Set<String> points = answer.safety().stream()
                .filter(part -> part.kind() == PartSafety.Kind.POINT)
                .map(PartSafety::part)
                .collect(Collectors.toSet());
        FieldWriter parts = Json.fields();
        for (PartSafety part : answer.safety()) {
            FieldWriter fields = Json.fields();
            times("steady", part.steady(), fields);
            times("after_loss", part.afterLoss(), fields);
            if (chains) {
                fields.put("strength", RigStrengthText.of(part.strength()));
            }
            boolean taken = part.kind() != PartSafety.Kind.POINT && points.contains(part.part());
            parts.put(taken ? part.part() + " (" + part.kind().word() + ")" : part.part(), fields.done());
        }
        return parts.done();
    }

    private static void times(String key, PartSafety.Times times, FieldWriter out) {
        if (times.ratio().isPresent()) {
            out.put(key, ratio(times.ratio().getAsDouble()));
        } else {
            out.put(key, Json.NOTHING).put(key + "_why", times.why());
        }
    }

    /** Cut off after the last digit; what lies a rounding error below a round number is that number. */
    static Json ratio(double value) {
        double scale = Math.pow(10, DECIMALS);
        return Json.rounded(Math.floor(value * scale * (1 + 1e-12)) / scale, DECIMALS);
    }
}
