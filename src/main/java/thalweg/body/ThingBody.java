package thalweg.body;

import java.util.Optional;
import thalweg.json.Json;
import thalweg.ledger.Uid;
import thalweg.logbook.PrivateNote;
import thalweg.logbook.Trip;
import thalweg.route.Anchor;
import thalweg.route.Canyon;
import thalweg.route.Obstacle;
import thalweg.route.Part;
import thalweg.route.PartialDate;
import thalweg.route.Station;
import thalweg.text.Width;

/**
 * A thing as the ledger takes it.
 *
 * @param type what kind of thing
 * @param uid its name in every database
 * @param label how a person recognises it
 * @param body its fields
 */
public record ThingBody(ThingType type, Uid uid, String label, Json.Fields body) {

    /** The key under which a thing that was taken out keeps the reason. */
    public static final String REMOVED_BECAUSE = "removed_because";

    private static final int LONGEST_LABEL = 40;

    /** A canyon. */
    public static ThingBody of(Canyon canyon) {
        return new ThingBody(ThingType.CANYON, canyon.uid(), canyon.name(), CanyonBody.write(canyon));
    }

    /** A place on the line. */
    public static ThingBody of(Obstacle obstacle) {
        String label = obstacle.name().isEmpty() ? Fields.key(obstacle.kind()) : obstacle.name();
        return new ThingBody(ThingType.OBSTACLE, obstacle.uid(), label, ObstacleBody.write(obstacle));
    }

    /** A station. */
    public static ThingBody of(Station station) {
        return new ThingBody(ThingType.STATION, station.uid(), station.name(), StationBody.write(station));
    }

    /** An anchor. */
    public static ThingBody of(Anchor anchor) {
        String label = anchor.name().isEmpty() ? Fields.key(anchor.role()) : anchor.name();
        return new ThingBody(ThingType.ANCHOR, anchor.uid(), label, AnchorBody.write(anchor));
    }

    /** A trip. */
    public static ThingBody of(Trip trip) {
        String label = trip.name().isEmpty() ? trip.on().map(PartialDate::print).orElse("") : trip.name();
        return new ThingBody(ThingType.TRIP, trip.uid(), label, TripBody.write(trip));
    }

    /** A private note, called by its beginning. */
    public static ThingBody of(PrivateNote note) {
        return new ThingBody(
                ThingType.PRIVATE_NOTE,
                note.uid(),
                Width.cut(note.text().lines().findFirst().orElse(""), LONGEST_LABEL),
                PrivateNoteBody.write(note));
    }

    /** A part. */
    public static ThingBody of(Part part) {
        return new ThingBody(ThingType.PART, part.uid(), part.label(), PartBody.write(part));
    }

    /** Its order key in what it is in; empty text for a thing that stands in no line. */
    public String order() {
        return body.text(Fields.ORDER);
    }

    /**
     * The same thing at another place.
     *
     * @param into what it is in
     * @param order its order key there
     */
    public ThingBody placed(Uid into, String order) {
        Json.Fields moved = body.with(type.parentKey(), Json.of(into.text())).with(Fields.ORDER, Json.of(order));
        return new ThingBody(type, uid, label, moved);
    }

    /**
     * The body with those fields of the stored one that only a newer version knows.
     *
     * @param stored as it is kept
     * @param before the stored one as this version reads it
     */
    public Json.Fields keepingUnknown(Json.Fields stored, Json.Fields before) {
        Json.Fields all = body;
        for (var field : stored.values().entrySet()) {
            if (!before.values().containsKey(field.getKey()) && !body.values().containsKey(field.getKey())) {
                all = all.with(field.getKey(), field.getValue());
            }
        }
        return all;
    }

    /** What the thing is in; empty for a canyon. */
    public Optional<Uid> parent() {
        return parent(type, body);
    }

    /** What a thing of that type and body is in; empty for a canyon. */
    public static Optional<Uid> parent(ThingType type, Json.Fields body) {
        return body.field(type.parentKey())
                .flatMap(value -> value instanceof Json.Text text ? Uid.parse(text.value()) : Optional.empty());
    }
}
