package thalweg.logbook;

import java.util.List;
import thalweg.ledger.Uid;
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

    /** The same place with that station alone; with none where it is not there. */
    public LineRecord alone(Uid station) {
        return new LineRecord(
                number,
                obstacle,
                stations.stream()
                        .filter(one -> one.station().uid().equals(station))
                        .toList());
    }

    /** How all parts of its stations stand together. */
    public Standing standing() {
        return stations.stream().map(StationRecord::standing).reduce(Standing.NOTHING, Standing::and);
    }
}
