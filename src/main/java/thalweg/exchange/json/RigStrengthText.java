package thalweg.exchange.json;

import java.util.Locale;
import java.util.Optional;
import thalweg.fault.Sentence;
import thalweg.json.FieldWriter;
import thalweg.json.Json;
import thalweg.rig.PartStrength;
import thalweg.rig.StrengthFactor;
import thalweg.units.Force;

/** Writes what a part is taken to hold: as stated, each thing that was taken off with its source, and what is left. */
final class RigStrengthText {

    private static final int DECIMALS = 6;

    private RigStrengthText() {}

    static Json of(PartStrength strength) {
        FieldWriter out = Json.fields()
                .put("stated_kN", force(strength.base()))
                .put(
                        "factors",
                        new Json.Items(strength.factors().stream()
                                .map(RigStrengthText::factor)
                                .toList()))
                .put("kN", force(strength.left()));
        if (strength.left().isEmpty()) {
            out.put("kN_why", strength.why())
                    .putKnown("at_most_kN", strength.atMost().map(RigStrengthText::number));
        }
        if (strength.isRange()) {
            out.put("low_kN", force(strength.low())).put("high_kN", force(strength.high()));
        }
        if (!strength.notes().isEmpty()) {
            out.put("notes", strength.notes().stream().map(Sentence::toString).toList());
        }
        return out.done();
    }

    private static Json factor(StrengthFactor factor) {
        FieldWriter out =
                Json.fields().put("name", factor.name()).put("share", Json.rounded(factor.nominal(), DECIMALS));
        if (factor.isRange()) {
            out.put("low", Json.rounded(factor.low(), DECIMALS)).put("high", Json.rounded(factor.high(), DECIMALS));
        }
        return out.put("source", factor.source().name().toLowerCase(Locale.ROOT))
                .put("words", factor.words())
                .done();
    }

    private static Json force(Optional<Force> force) {
        return force.map(RigStrengthText::number).orElse(Json.NOTHING);
    }

    private static Json number(Force force) {
        return Json.rounded(force.inKilonewtons(), DECIMALS);
    }
}
