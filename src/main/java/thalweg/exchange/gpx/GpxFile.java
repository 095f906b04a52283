package thalweg.exchange.gpx;

import java.util.List;
import thalweg.fault.Sentence;

/**
 * What a file of waypoints holds.
 *
 * @param waypoints in the order of the file, those on routes among them
 * @param trackPoints how many points of tracks there are: the way a device went, which is not taken
 * @param remarks what a person should know although nothing is wrong, one line each
 */
public record GpxFile(List<Waypoint> waypoints, int trackPoints, List<Sentence> remarks) {

    /** More are no line of a canyon, and no person would place them. */
    public static final int MOST_WAYPOINTS = 20_000;

    /** Nothing. */
    public static final GpxFile EMPTY = new GpxFile(List.of(), 0, List.of());

    public GpxFile {
        waypoints = List.copyOf(waypoints);
        remarks = List.copyOf(remarks);
    }

    /** How many of the waypoints stand there. */
    public int count(Waypoint.Origin origin) {
        return (int) waypoints.stream()
                .filter(waypoint -> waypoint.origin() == origin)
                .count();
    }
}
