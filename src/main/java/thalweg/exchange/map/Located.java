package thalweg.exchange.map;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import thalweg.logbook.CanyonRecord;
import thalweg.logbook.LineRecord;
import thalweg.place.Position;

/**
 * How much of some canyons a map can show.
 *
 * @param points things of which the coordinates are known: canyons, places and stations
 * @param nowhere names of those of which they are not, each with its canyon
 */
public record Located(int points, List<String> nowhere) {

    public Located {
        nowhere = List.copyOf(nowhere);
    }

    /** Counts them. */
    public static Located of(List<CanyonRecord> canyons) {
        List<String> nowhere = new ArrayList<>();
        int points = 0;
        for (CanyonRecord canyon : canyons) {
            String name = canyon.canyon().name();
            points += counted(canyon.canyon().position(), name, nowhere);
            for (LineRecord place : canyon.line()) {
                points += counted(place.obstacle().position(), name + " " + place.number(), nowhere);
                for (var station : place.stations()) {
                    points += counted(
                            station.station().position(),
                            name + " " + place.number() + " "
                                    + station.station().name(),
                            nowhere);
                }
            }
        }
        return new Located(points, nowhere);
    }

    private static int counted(Optional<Position> position, String name, List<String> nowhere) {
        if (position.isEmpty()) {
            nowhere.add(name);
        }
        return position.isPresent() ? 1 : 0;
    }

    /** The way down as far as it is known: of each place its own coordinates, or else those of its first station that has some. */
    static List<Stop> way(CanyonRecord canyon) {
        List<Stop> way = new ArrayList<>();
        for (LineRecord place : canyon.line()) {
            place.obstacle()
                    .position()
                    .or(() -> place.stations().stream()
                            .flatMap(station -> station.station().position().stream())
                            .findFirst())
                    .ifPresent(at -> way.add(new Stop(place, at)));
        }
        return way;
    }

    /** A place on the way. */
    record Stop(LineRecord place, Position position) {}
}
