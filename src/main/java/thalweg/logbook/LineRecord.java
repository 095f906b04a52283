package thalweg.logbook;

import java.util.List;
import java.util.Optional;
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

    /** The worst condition of any part here that has been seen. */
    public Optional<Condition> worst() {
        return stations.stream().flatMap(station -> station.worst().stream()).reduce(Condition::worse);
    }
}
