package thalweg.exchange.json;

import java.util.Optional;
import java.util.OptionalDouble;
import thalweg.json.FieldReader;
import thalweg.json.Json;
import thalweg.rig.Fibre;
import thalweg.rig.Kept;
import thalweg.rig.PartCondition;
import thalweg.rig.SlingDraft;
import thalweg.rig.SlingTie;
import thalweg.rig.Textile;

/** Reads and writes what is slung round a point of a rig. */
final class SlingFile {

    private SlingFile() {}

    static SlingDraft read(FieldReader in) {
        SlingDraft sling = new SlingDraft(
                in.word("tie", SlingTie.class),
                in.real("width_m"),
                in.real("around_m"),
                in.real("reach_m"),
                in.real("EA_kN"),
                in.real("strand_kN"),
                in.real("knot_efficiency"),
                new Textile(
                        in.word("condition", PartCondition.class),
                        in.word("fibre", Fibre.class),
                        in.real("age_years"),
                        in.word("kept", Kept.class)));
        in.refuseUnasked();
        return sling;
    }

    static Json write(SlingDraft sling) {
        return Json.fields()
                .putWord("tie", sling.tie())
                .putKnown("width_m", number(sling.widthMetres()))
                .putKnown("around_m", number(sling.aroundMetres()))
                .putKnown("reach_m", number(sling.reachMetres()))
                .putKnown("EA_kN", number(sling.stiffnessKilonewtons()))
                .putKnown("strand_kN", number(sling.strandKilonewtons()))
                .putKnown("knot_efficiency", number(sling.knotEfficiency()))
                .putWord("condition", sling.textile().condition())
                .putWord("fibre", sling.textile().fibre())
                .putKnown("age_years", number(sling.textile().ageYears()))
                .putWord("kept", sling.textile().kept())
                .done();
    }

    private static Optional<Json> number(OptionalDouble value) {
        return value.isPresent() ? Optional.of(Json.rounded(value.getAsDouble(), 6)) : Optional.empty();
    }
}
