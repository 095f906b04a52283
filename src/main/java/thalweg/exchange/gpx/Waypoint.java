package thalweg.exchange.gpx;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import thalweg.body.Limits;
import thalweg.place.Position;
import thalweg.units.Length;

/**
 * One point of a file, its texts cleaned. Names need not differ: waypoints are told apart by their lines and coordinates.
 *
 * @param line of the file on which it begins, counted from 1; in a file without line ends they share one
 * @param origin where in the file it stands
 * @param name empty text where it has none
 * @param position without an accuracy: the format states none in metres
 * @param elevation above the sea as some device saw it, good for finding the way, too rough for the height of a drop
 * @param comment empty text where there is none; may have several lines
 * @param description empty text where there is none; may have several lines
 * @param symbol the word of the program that wrote the file, empty text where there is none
 * @param type the word of the program that wrote the file, empty text where there is none
 * @param time as it is written, empty text where there is none
 */
public record Waypoint(
        int line,
        Origin origin,
        String name,
        Position position,
        Optional<Length> elevation,
        String comment,
        String description,
        String symbol,
        String type,
        String time) {

    /** A comment and a description together are still a note that can be kept [characters]. */
    public static final int LONGEST_NOTE = Limits.PROSE / 2 - 1;

    /** Below and above it is no elevation on land [m]. */
    static final int LEAST_ELEVATION = -500;

    static final int MOST_ELEVATION = 9000;

    /** Where in a file a point stands. */
    public enum Origin {
        /** By itself. */
        WAYPOINT,
        /** On a planned route. */
        ROUTE_POINT
    }

    public Waypoint {
        if (line < 1) {
            throw new IllegalArgumentException("lines count from 1");
        }
    }

    /** Whether so many metres can be an elevation. */
    public static boolean canBeElevation(BigDecimal metres) {
        return metres.compareTo(BigDecimal.valueOf(LEAST_ELEVATION)) >= 0
                && metres.compareTo(BigDecimal.valueOf(MOST_ELEVATION)) <= 0;
    }

    /** What somebody wrote about it: description and comment, once where they are the same; empty where neither is there. */
    public String note() {
        return Stream.of(description, comment)
                .filter(text -> !text.isBlank())
                .distinct()
                .collect(Collectors.joining("\n"));
    }
}
