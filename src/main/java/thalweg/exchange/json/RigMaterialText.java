package thalweg.exchange.json;

import thalweg.json.FieldWriter;
import thalweg.json.Json;
import thalweg.rig.RigMaterial;
import thalweg.units.Length;

/** Writes what a layout takes of webbing or cord, and of connectors. */
final class RigMaterialText {

    private static final int DECIMALS = 3;

    private static final String NOTE =
            "knots and tails are from memory, but for the tails of a ring bend; what goes round"
                    + " a tree, a boulder or a thread comes on top";

    private static final String NOTE_SLUNG =
            "knots and tails are from memory, but for the tails of a ring bend; where no sling is stated, what goes round"
                    + " a tree, a boulder or a thread comes on top";

    private RigMaterialText() {}

    static Json of(RigMaterial material) {
        FieldWriter fields = Json.fields();
        if (material.unknown().isEmpty()) {
            fields.put("length_m", length(material.total()));
        } else {
            fields.put("length_m", Json.NOTHING)
                    .put("length_why", "not stated: how far it is around " + String.join(", ", material.unknown()));
        }
        return fields.put("connectors", material.connectors())
                .put("knots", material.knots())
                .put(
                        "pieces",
                        new Json.Items(material.pieces().stream()
                                .map(RigMaterialText::piece)
                                .toList()))
                .put("note", material.slung() ? NOTE_SLUNG : NOTE)
                .done();
    }

    private static Json piece(RigMaterial.Piece piece) {
        return Json.fields()
                .put("count", piece.count())
                .put("length_m", length(piece.length()))
                .put("what", piece.what().toString())
                .done();
    }

    private static Json length(Length length) {
        return Json.rounded(length.metres(), DECIMALS);
    }
}
