package thalweg.placing;

import thalweg.ledger.Uid;

/** One place on the line while waypoints are being placed. */
public sealed interface Spot {

    /** A place that was there before. */
    record Known(Uid obstacle) implements Spot {}

    /**
     * A place that a waypoint becomes.
     *
     * @param waypoint counted from 0 in the file
     */
    record Made(int waypoint) implements Spot {}
}
