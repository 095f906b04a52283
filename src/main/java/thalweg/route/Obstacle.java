package thalweg.route;

import java.util.Optional;
import thalweg.ledger.Uid;
import thalweg.place.Position;
import thalweg.units.Length;

/**
 * One place on a canyon's line.
 *
 * @param uid its name in every database
 * @param canyon whose line it is on
 * @param order its place on the line, a key that sorts
 * @param kind what it asks of a group
 * @param name empty text where it has none
 * @param distance along the line from the start, 0 or more
 * @param height of it, 0 or more
 * @param position where it is on the globe; empty where nobody said
 * @param note empty text where there is none
 * @param wayOut how long it takes to walk out from an escape [min], 1 to 10,000; empty where nobody said, and for any other place
 */
public record Obstacle(
        Uid uid,
        Uid canyon,
        String order,
        ObstacleKind kind,
        String name,
        Optional<Length> distance,
        Optional<Length> height,
        Optional<Position> position,
        String note,
        Optional<Integer> wayOut) {

    public Obstacle {
        if (order.isBlank()) {
            throw new IllegalArgumentException("an obstacle has a place on the line");
        }
        if (distance.filter(length -> length.metres() < 0).isPresent()
                || height.filter(length -> length.metres() < 0).isPresent()) {
            throw new IllegalArgumentException("distance and height are 0 or more");
        }
        if (wayOut.filter(minutes -> minutes < 1 || minutes > Times.MOST_MINUTES)
                        .isPresent()
                || (wayOut.isPresent() && kind != ObstacleKind.ESCAPE)) {
            throw new IllegalArgumentException("an escape has a way out of 1 to " + Times.MOST_MINUTES + " minutes");
        }
    }

    /** A place of which nobody said how long the way out takes. */
    public Obstacle(
            Uid uid,
            Uid canyon,
            String order,
            ObstacleKind kind,
            String name,
            Optional<Length> distance,
            Optional<Length> height,
            Optional<Position> position,
            String note) {
        this(uid, canyon, order, kind, name, distance, height, position, note, Optional.empty());
    }

    /** The same at another position. */
    public Obstacle withPosition(Optional<Position> other) {
        return new Obstacle(uid, canyon, order, kind, name, distance, height, other, note, wayOut);
    }
}
