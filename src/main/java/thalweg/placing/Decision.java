package thalweg.placing;

import thalweg.ledger.Uid;
import thalweg.route.ObstacleKind;

/** What a waypoint is, as a person decided. */
public sealed interface Decision {

    /** Nobody has decided yet, and nothing is taken from it. */
    record Undecided() implements Decision {}

    /** Nothing on this line. */
    record LeftOut() implements Decision {}

    /** A place that was not on the line before; where it stands, the line says. */
    record NewPlace(ObstacleKind kind) implements Decision {}

    /** Where a place is that was on the line before. */
    record PlacePosition(Uid obstacle) implements Decision {}

    /** Where a station is that was there before. */
    record StationPosition(Uid station) implements Decision {}

    /**
     * A station that was not there before.
     *
     * @param at the place that it serves, old or new
     * @param name not blank
     */
    record NewStation(Spot at, String name) implements Decision {
        public NewStation {
            if (name.isBlank()) {
                throw new IllegalArgumentException("a station has a name");
            }
        }
    }

    /** Where the descent begins. */
    record CanyonStart() implements Decision {}

    /** Whether something is written because of it. */
    default boolean takes() {
        return !(this instanceof Undecided) && !(this instanceof LeftOut);
    }
}
