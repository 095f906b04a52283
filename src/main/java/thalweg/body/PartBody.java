package thalweg.body;

import java.util.Optional;
import thalweg.fault.Sentence;
import thalweg.json.FieldReader;
import thalweg.json.Json;
import thalweg.ledger.Uid;
import thalweg.route.HoldsAlone;
import thalweg.route.Part;
import thalweg.route.PartKind;
import thalweg.route.PartPlace;
import thalweg.units.Length;

/** A part as a body. */
public final class PartBody {

    /** The key of the anchor it belongs to. */
    public static final String PARENT = "anchor";

    private PartBody() {}

    /** Its fields, what is unknown left out. */
    public static Json.Fields write(Part part) {
        return Json.fields()
                .put(PARENT, part.anchor().text())
                .put(Fields.ORDER, part.order())
                .put("label", part.label())
                .put("kind", part.kind())
                .put("material", part.hardware().material())
                .put("size", part.hardware().size())
                .put("standard", part.hardware().standard())
                .put("maker", part.hardware().maker())
                .put("batch", part.hardware().batch())
                .putKnown("placed", part.placed().map(date -> Json.of(date.print())))
                .putKnown("place", part.place().map(PartBody::place))
                .putKnown("strength_n", Fields.newtons(part.strength()))
                .putKnown("axial_strength_n", Fields.newtons(part.axialStrength()))
                .putWord("holds_alone", part.holdsAlone())
                .put("note", part.note())
                .done();
    }

    /** A place as a value. */
    public static Json place(PartPlace place) {
        return Json.fields()
                .put("right_cm", place.right().inCentimetres())
                .put("up_cm", place.up().inCentimetres())
                .put("out_cm", place.out().inCentimetres())
                .done();
    }

    /**
     * The part; empty where a rule was broken.
     *
     * @param order its place in line where the fields do not state one
     */
    public static Optional<Part> read(Uid uid, Uid anchor, String order, FieldReader in) {
        String inLine = Fields.order(in, order);
        String label = in.text("label", Limits.NAME);
        PartKind kind = in.requiredWord("kind", PartKind.class);
        Part.Hardware hardware = new Part.Hardware(
                in.textOrEmpty("material", Limits.NAME),
                in.textOrEmpty("size", Limits.NAME),
                in.textOrEmpty("standard", Limits.NAME),
                in.textOrEmpty("maker", Limits.NAME),
                in.textOrEmpty("batch", Limits.NAME));
        var placed = Fields.date(in, "placed");
        Optional<PartPlace> place = in.object("place").flatMap(inner -> readPlace(in, inner));
        var strength = Fields.newtons(in, "strength_n");
        var axial = Fields.newtons(in, "axial_strength_n");
        var holdsAlone = in.word("holds_alone", HoldsAlone.class);
        String note = in.linesOrEmpty("note", Limits.PROSE);
        return in.sound()
                ? Optional.of(new Part(
                        uid, anchor, inLine, label, kind, hardware, placed, place, strength, axial, holdsAlone, note))
                : Optional.empty();
    }

    private static Optional<PartPlace> readPlace(FieldReader outer, FieldReader in) {
        Optional<Length> right = coordinate(in, "right_cm");
        Optional<Length> up = coordinate(in, "up_cm");
        Optional<Length> out = coordinate(in, "out_cm");
        in.refuseUnasked();
        if (in.sound() && right.isPresent() && up.isPresent() && out.isPresent()) {
            return Optional.of(new PartPlace(right.get(), up.get(), out.get()));
        }
        if (in.sound()) {
            outer.refuse(
                    "place",
                    Sentence.of("should have right_cm, up_cm and out_cm, measured from the anchor's first point."));
        }
        return Optional.empty();
    }

    private static Optional<Length> coordinate(FieldReader in, String key) {
        return Fields.centimetres(in, key, -Limits.PLACE_CM, Limits.PLACE_CM);
    }
}
