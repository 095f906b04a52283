package thalweg.body;

import java.util.Optional;
import thalweg.json.FieldReader;
import thalweg.json.Json;
import thalweg.ledger.Uid;
import thalweg.route.Anchor;
import thalweg.route.AnchorRole;

/** An anchor as a body. */
public final class AnchorBody {

    /** The key of the station it is at. */
    public static final String PARENT = "station";

    private AnchorBody() {}

    /** Its fields, what is unknown left out. */
    public static Json.Fields write(Anchor anchor) {
        return Json.fields()
                .put(PARENT, anchor.station().text())
                .put(Fields.ORDER, anchor.order())
                .put("role", anchor.role())
                .put("name", anchor.name())
                .put("note", anchor.note())
                .done();
    }

    /**
     * The anchor; empty where a rule was broken.
     *
     * @param order its place in line where the fields do not state one
     */
    public static Optional<Anchor> read(Uid uid, Uid station, String order, FieldReader in) {
        String place = Fields.order(in, order);
        AnchorRole role = in.requiredWord("role", AnchorRole.class);
        String name = in.textOrEmpty("name", Limits.NAME);
        String note = in.linesOrEmpty("note", Limits.PROSE);
        return in.sound() ? Optional.of(new Anchor(uid, station, place, role, name, note)) : Optional.empty();
    }
}
