package thalweg.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import thalweg.logbook.CanyonRecord;
import thalweg.logbook.LineRecord;
import thalweg.route.ObstacleKind;
import thalweg.units.Length;

/**
 * A place of the line that a rope has to reach down: a drop for short.
 *
 * @param place on the line, counted from 1
 * @param name of the place or its station; empty text where it has none
 * @param length from the anchor to the landing, above 0; empty where nobody knows it
 * @param measured whether the length is the rope that somebody said is needed; else it is the height of the drop alone
 */
public record RopeNeed(int place, String name, Optional<Length> length, boolean measured) {

    public RopeNeed {
        if (length.filter(metres -> metres.metres() <= 0).isPresent() || (length.isEmpty() && measured)) {
            throw new IllegalArgumentException("a drop that is known has a length");
        }
    }

    /**
     * The places of a canyon that ask for a rope, in the order of its line: drops, handlines, and whatever has a station at
     * which somebody said how much rope is needed, such as the way round a jump. Of several stations at one place the longest
     * rope counts.
     */
    public static List<RopeNeed> of(CanyonRecord canyon) {
        List<RopeNeed> needs = new ArrayList<>();
        canyon.line().stream().filter(RopeNeed::asks).forEach(place -> needs.add(of(place)));
        return needs;
    }

    private static boolean asks(LineRecord place) {
        ObstacleKind kind = place.obstacle().kind();
        return kind == ObstacleKind.DROP
                || kind == ObstacleKind.HANDLINE
                || place.stations().stream()
                        .flatMap(station -> station.station().ropeNeeded().stream())
                        .anyMatch(length -> length.metres() > 0);
    }

    private static RopeNeed of(LineRecord place) {
        Optional<Length> rope = place.stations().stream()
                .flatMap(station -> station.station().ropeNeeded().stream())
                .max(Comparator.naturalOrder())
                .filter(length -> length.metres() > 0);
        Optional<Length> height = place.obstacle().height().filter(length -> length.metres() > 0);
        String name = place.obstacle().name().isEmpty()
                ? place.stations().stream()
                        .map(station -> station.station().name())
                        .findFirst()
                        .orElse("")
                : place.obstacle().name();
        return new RopeNeed(place.number(), name, rope.or(() -> height), rope.isPresent());
    }
}
