package thalweg.route;

import java.util.Optional;
import thalweg.ledger.Uid;
import thalweg.place.Position;
import thalweg.units.Length;

/**
 * A place where ropes are rigged.
 *
 * @param uid its name in every database
 * @param obstacle which it serves
 * @param order its place among the stations of the obstacle, a key that sorts
 * @param name not blank
 * @param side on which it is, looking downstream; empty where unknown
 * @param ropeNeeded from the anchor to the landing, 0 or more; empty where unknown
 * @param position where it is on the globe; empty where nobody said
 * @param exposure what its hardware stands in; empty where nobody said
 * @param prose how to find it, rub points, landing
 */
public record Station(
        Uid uid,
        Uid obstacle,
        String order,
        String name,
        Optional<Side> side,
        Optional<Length> ropeNeeded,
        Optional<Position> position,
        Optional<Exposure> exposure,
        Prose<StationText> prose) {

    public Station {
        if (order.isBlank() || name.isBlank()) {
            throw new IllegalArgumentException("a station has a name and a place in line");
        }
        if (ropeNeeded.filter(length -> length.metres() < 0).isPresent()) {
            throw new IllegalArgumentException("a rope length is 0 or more");
        }
    }
}
