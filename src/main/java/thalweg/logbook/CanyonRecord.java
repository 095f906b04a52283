package thalweg.logbook;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import thalweg.ledger.Uid;
import thalweg.route.Canyon;
import thalweg.route.ObstacleKind;
import thalweg.route.PartialDate;
import thalweg.units.Length;

/**
 * A canyon with everything in it.
 *
 * @param canyon as it is entered
 * @param line in order, numbered from 1
 * @param rounds visits on which anchors were looked at, those that no longer count too, newest first
 */
public record CanyonRecord(Canyon canyon, List<LineRecord> line, List<Entry<Round>> rounds) {

    public CanyonRecord {
        line = List.copyOf(line);
        rounds = Amendments.settle(rounds);
    }

    /** A canyon on which nobody noted a round. */
    public CanyonRecord(Canyon canyon, List<LineRecord> line) {
        this(canyon, line, List.of());
    }

    /** What tells it from others where it is only named. */
    public CanyonName named() {
        return new CanyonName(canyon.uid(), canyon.name(), canyon.whereabouts(), canyon.invented());
    }

    /** The rounds that count, newest first. */
    public List<Entry<Round>> countingRounds() {
        return rounds.stream().filter(Entry::counts).toList();
    }

    /** Every station along the line. */
    public List<StationRecord> stations() {
        return line.stream().flatMap(place -> place.stations().stream()).toList();
    }

    /** The station of that name, if it is here. */
    public Optional<StationRecord> station(Uid uid) {
        return stations().stream()
                .filter(station -> station.station().uid().equals(uid))
                .findFirst();
    }

    /** The place on the line of that name, if it is here. */
    public Optional<LineRecord> place(Uid obstacle) {
        return line.stream()
                .filter(place -> place.obstacle().uid().equals(obstacle))
                .findFirst();
    }

    /** The place on the line that the station serves, if it is here. */
    public Optional<LineRecord> placeOf(Uid station) {
        return station(station).flatMap(record -> place(record.station().obstacle()));
    }

    /** When any part was seen last. */
    public Optional<PartialDate> newestInspection() {
        return lastSeen().max(PartialDate.BY_LAST_DAY);
    }

    /** The oldest among the dates on which the parts were last seen: how old the weakest news is. */
    public Optional<PartialDate> oldestLastSeen() {
        return stations().stream().flatMap(StationRecord::lastSeen).min(PartialDate.BY_LAST_DAY);
    }

    /** How all parts of all stations stand together. */
    public Standing standing() {
        return line.stream().map(LineRecord::standing).reduce(Standing.NOTHING, Standing::and);
    }

    /** The longest drop: as stated, else the highest drop on the line; empty where neither is known. */
    public Optional<Length> longestDrop() {
        if (canyon.longestDrop().isPresent()) {
            return canyon.longestDrop();
        }
        return line.stream()
                .filter(place -> place.obstacle().kind() == ObstacleKind.DROP)
                .flatMap(place -> place.obstacle().height().stream())
                .max(Comparator.naturalOrder());
    }

    private Stream<PartialDate> lastSeen() {
        return stations().stream().flatMap(StationRecord::lastSeen);
    }
}
