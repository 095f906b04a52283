package thalweg.body;

import java.util.Optional;
import thalweg.fault.Sentence;
import thalweg.json.FieldReader;
import thalweg.json.Json;
import thalweg.ledger.Uid;
import thalweg.route.Obstacle;
import thalweg.route.ObstacleKind;
import thalweg.route.Times;

/** An obstacle as a body. */
public final class ObstacleBody {

    /** The key of the canyon it is in. */
    public static final String PARENT = "canyon";

    private ObstacleBody() {}

    /** Its fields, what is unknown left out. */
    public static Json.Fields write(Obstacle obstacle) {
        return Json.fields()
                .put(PARENT, obstacle.canyon().text())
                .put(Fields.ORDER, obstacle.order())
                .put("kind", obstacle.kind())
                .put("name", obstacle.name())
                .putKnown("distance_cm", Fields.centimetres(obstacle.distance()))
                .putKnown("height_cm", Fields.centimetres(obstacle.height()))
                .putKnown(PositionBody.KEY, PositionBody.written(obstacle.position()))
                .put("note", obstacle.note())
                .putKnown("way_out_min", Fields.whole(obstacle.wayOut()))
                .done();
    }

    /**
     * The obstacle; empty where a rule was broken.
     *
     * @param order its place in line where the fields do not state one
     */
    public static Optional<Obstacle> read(Uid uid, Uid canyon, String order, FieldReader in) {
        String place = Fields.order(in, order);
        ObstacleKind kind = in.requiredWord("kind", ObstacleKind.class);
        String name = in.textOrEmpty("name", Limits.NAME);
        var distance = Fields.centimetres(in, "distance_cm", 0, Limits.DISTANCE_CM);
        var height = Fields.centimetres(in, "height_cm", 0, Limits.HEIGHT_CM);
        var position = PositionBody.read(in);
        String note = in.linesOrEmpty("note", Limits.PROSE);
        var wayOut = Fields.whole(in, "way_out_min", 1, Times.MOST_MINUTES);
        if (wayOut.isPresent() && kind != ObstacleKind.ESCAPE) {
            in.refuse("way_out_min", Sentence.of("belongs to an escape; leave it out of any other place."));
        }
        return in.sound()
                ? Optional.of(new Obstacle(uid, canyon, place, kind, name, distance, height, position, note, wayOut))
                : Optional.empty();
    }
}
