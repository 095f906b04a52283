package thalweg.body;

import java.util.Optional;
import thalweg.json.FieldReader;
import thalweg.json.Json;
import thalweg.ledger.Uid;
import thalweg.route.Exposure;
import thalweg.route.Side;
import thalweg.route.Station;
import thalweg.route.StationText;

/** A station as a body. */
public final class StationBody {

    /** The key of the obstacle it serves. */
    public static final String PARENT = "obstacle";

    private StationBody() {}

    /** Its fields, what is unknown left out. */
    public static Json.Fields write(Station station) {
        Json.Fields fields = Json.fields()
                .put(PARENT, station.obstacle().text())
                .put(Fields.ORDER, station.order())
                .put("name", station.name())
                .putWord("side", station.side())
                .putKnown("rope_needed_cm", Fields.centimetres(station.ropeNeeded()))
                .putKnown(PositionBody.KEY, PositionBody.written(station.position()))
                .putWord("exposure", station.exposure())
                .done();
        return Fields.withProse(fields, station.prose());
    }

    /**
     * The station; empty where a rule was broken.
     *
     * @param order its place in line where the fields do not state one
     */
    public static Optional<Station> read(Uid uid, Uid obstacle, String order, FieldReader in) {
        String place = Fields.order(in, order);
        String name = in.text("name", Limits.NAME);
        var side = in.word("side", Side.class);
        var rope = Fields.centimetres(in, "rope_needed_cm", 0, Limits.ROPE_CM);
        var position = PositionBody.read(in);
        var exposure = in.word("exposure", Exposure.class);
        var prose = Fields.prose(in, StationText.class);
        return in.sound()
                ? Optional.of(new Station(uid, obstacle, place, name, side, rope, position, exposure, prose))
                : Optional.empty();
    }
}
