package thalweg.exchange.json;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import thalweg.json.FieldReader;
import thalweg.json.FieldWriter;
import thalweg.json.Json;
import thalweg.rig.BoltDraft;
import thalweg.rig.ConnectorDraft;
import thalweg.rig.ConnectorLoad;
import thalweg.rig.Fibre;
import thalweg.rig.Kept;
import thalweg.rig.Knot;
import thalweg.rig.PartCondition;
import thalweg.rig.PointTraitsDraft;
import thalweg.rig.StrandTraitsDraft;

/** Reads and writes what a rig file states of points, strands and connectors besides where they are and what they hold. */
final class RigTraitsText {

    private static final String CONDITION = "condition";
    private static final String CONNECTOR = "connector";

    private RigTraitsText() {}

    static PointTraitsDraft point(FieldReader in) {
        return new PointTraitsDraft(
                in.word(CONDITION, PartCondition.class),
                new BoltDraft(
                        in.real("radial_kN"),
                        in.real("axial_kN"),
                        in.reals("axis").orElse(List.of())),
                in.object(CONNECTOR).map(RigTraitsText::connector));
    }

    static StrandTraitsDraft strands(FieldReader in) {
        Map<String, Double> derating = new LinkedHashMap<>();
        in.object("derating").ifPresent(inner -> {
            for (String word : inner.unasked()) {
                inner.real(word).ifPresent(share -> derating.put(word, share));
            }
        });
        return new StrandTraitsDraft(
                in.word(CONDITION, PartCondition.class),
                in.word("knot", Knot.class),
                in.word("strand_fibre", Fibre.class),
                in.real("strand_age_years"),
                in.word("strand_kept", Kept.class),
                in.object(CONNECTOR).map(RigTraitsText::connector),
                derating);
    }

    private static ConnectorDraft connector(FieldReader in) {
        ConnectorDraft connector = new ConnectorDraft(
                in.real("strength_kN"),
                in.real("across_kN"),
                in.real("open_kN"),
                in.word("loaded", ConnectorLoad.class));
        in.refuseUnasked();
        return connector;
    }

    static FieldWriter write(PointTraitsDraft traits, FieldWriter out) {
        BoltDraft bolt = traits.bolt();
        return out.putWord(CONDITION, traits.condition())
                .putKnown("radial_kN", number(bolt.radialKilonewtons()))
                .putKnown("axial_kN", number(bolt.axialKilonewtons()))
                .putKnown("axis", bolt.axis().isEmpty() ? Optional.empty() : Optional.of(numbers(bolt.axis())))
                .putKnown(CONNECTOR, traits.connector().map(RigTraitsText::connector));
    }

    static FieldWriter write(StrandTraitsDraft traits, FieldWriter out) {
        FieldWriter shares = Json.fields();
        traits.derating().forEach((word, share) -> shares.put(word, Json.rounded(share, 6)));
        return out.putWord("knot", traits.knot())
                .putWord(CONDITION, traits.condition())
                .putWord("strand_fibre", traits.fibre())
                .putKnown("strand_age_years", number(traits.ageYears()))
                .putWord("strand_kept", traits.kept())
                .putKnown(CONNECTOR, traits.connector().map(RigTraitsText::connector))
                .putKnown("derating", traits.derating().isEmpty() ? Optional.empty() : Optional.of(shares.done()));
    }

    private static Json connector(ConnectorDraft connector) {
        return Json.fields()
                .putKnown("strength_kN", number(connector.strengthKilonewtons()))
                .putKnown("across_kN", number(connector.acrossKilonewtons()))
                .putKnown("open_kN", number(connector.openKilonewtons()))
                .putWord("loaded", connector.loaded())
                .done();
    }

    private static Optional<Json> number(OptionalDouble value) {
        return value.isPresent() ? Optional.of(Json.rounded(value.getAsDouble(), 6)) : Optional.empty();
    }

    private static Json numbers(List<Double> values) {
        return new Json.Items(
                values.stream().map(value -> Json.rounded(value, 6)).toList());
    }
}
