package thalweg.logbook;

import java.util.Optional;
import java.util.stream.Stream;
import thalweg.ledger.Uid;

/**
 * When a party was at a place of the line.
 *
 * @param place on the line
 * @param label as the place was called then, so that it can be read where the place is gone; not blank
 * @param reached when the first was there [minutes after midnight, 0 to 1439]; empty where nobody noted it
 * @param left when the last was on the way again [minutes after midnight, 0 to 1439]; empty where nobody noted it
 */
public record TripTime(Uid place, String label, Optional<Integer> reached, Optional<Integer> left) {

    public TripTime {
        if (label.isBlank() || (reached.isEmpty() && left.isEmpty())) {
            throw new IllegalArgumentException("a time is noted at a place");
        }
        if (reached.filter(Trip::isNoTime).isPresent()
                || left.filter(Trip::isNoTime).isPresent()) {
            throw new IllegalArgumentException("a time of day is 0 to 1439 minutes");
        }
    }

    /** What a place is called in short: its number, and its name or that of its first station. */
    public static String label(LineRecord place) {
        String name = Stream.concat(
                        Stream.of(place.obstacle().name()),
                        place.stations().stream()
                                .map(station -> station.station().name()))
                .filter(one -> !one.isBlank())
                .findFirst()
                .orElse("");
        return (place.number() + " " + name).strip();
    }

    /**
     * Whether a place was left before it was reached. Midnight may lie between the two, but half a day at one place is not
     * believed.
     */
    public static boolean isBackwards(Optional<Integer> reached, Optional<Integer> left) {
        return reached.isPresent()
                && left.isPresent()
                && Math.floorMod(left.get() - reached.get(), Trip.DAY) > Trip.DAY / 2;
    }
}
