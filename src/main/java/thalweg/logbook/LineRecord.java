package thalweg.logbook;

import java.util.List;
import thalweg.route.Obstacle;

/**
 * One place on a canyon's line with its stations.
 *
 * @param number counted from 1 along the line
 * @param obstacle as it is entered
 * @param stations in order
 */
public record LineRecord(int number, Obstacle obstacle, List<StationRecord> stations) {

    public LineRecord {
        stations = List.copyOf(stations);
    }

    /** How all parts of its stations stand together. */
    public Standing standing() {
        return stations.stream().map(StationRecord::standing).reduce(Standing.NOTHING, Standing::and);
    }
}
