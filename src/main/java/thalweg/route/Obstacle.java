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
        String note) {

    public Obstacle {
        if (order.isBlank()) {
            throw new IllegalArgumentException("an obstacle has a place on the line");
        }
        if (distance.filter(length -> length.metres() < 0).isPresent()
                || height.filter(length -> length.metres() < 0).isPresent()) {
            throw new IllegalArgumentException("distance and height are 0 or more");
        }
    }
}
