package thalweg.body;

import java.util.Optional;
import java.util.OptionalLong;
import thalweg.fault.Sentence;
import thalweg.json.FieldReader;
import thalweg.json.Json;
import thalweg.place.Position;

/** A position as it stands in the bodies of a canyon, of a place on the line and of a station. */
public final class PositionBody {

    /** The key of it. */
    public static final String KEY = "position";

    private static final String DATUM = "WGS 84";

    private PositionBody() {}

    /** It as a value; nothing where it is unknown. */
    public static Optional<Json> written(Optional<Position> position) {
        return position.map(known -> Json.fields()
                .put("lat_e7", known.latE7())
                .put("lon_e7", known.lonE7())
                .put("datum", DATUM)
                .putKnown("accuracy_m", Fields.whole(known.accuracyMetres()))
                .done());
    }

    /** The position in the fields, if there is a sound one. */
    static Optional<Position> read(FieldReader in) {
        return in.object(KEY).flatMap(inner -> read(in, inner));
    }

    private static Optional<Position> read(FieldReader outer, FieldReader in) {
        OptionalLong lat = in.whole("lat_e7", -90 * Position.PER_DEGREE, 90 * Position.PER_DEGREE);
        OptionalLong lon = in.whole("lon_e7", -180 * Position.PER_DEGREE, 180 * Position.PER_DEGREE - 1);
        Optional<String> datum = in.optionalText("datum", 20);
        Optional<Integer> accuracy = Fields.whole(in, "accuracy_m", 1, 100_000);
        in.refuseUnasked();
        if (datum.filter(name -> !name.equals(DATUM)).isPresent()) {
            in.refuse("datum", Sentence.of("is \"{0}\"; only {1} is known.", datum.get(), DATUM));
        }
        if (in.sound() && lat.isPresent() && lon.isPresent()) {
            return Optional.of(new Position(lat.getAsLong(), lon.getAsLong(), accuracy));
        }
        if (in.sound()) {
            outer.refuse(KEY, Sentence.of("should have lat_e7 and lon_e7, in ten-millionths of a degree."));
        }
        return Optional.empty();
    }
}
