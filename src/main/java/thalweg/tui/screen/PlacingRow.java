package thalweg.tui.screen;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import thalweg.logbook.LineRecord;
import thalweg.logbook.StationRecord;
import thalweg.placing.Decision;
import thalweg.placing.Placing;
import thalweg.placing.Spot;

/**
 * One row of the line while waypoints are being placed: the start of the canyon, a place, or a station under it.
 *
 * @param number of the place on the line, counted from 1; 0 for the start
 * @param spot the place; empty for the start
 * @param station a station that was there before
 * @param newStation the waypoint that becomes a station, counted from 0 in the file
 */
record PlacingRow(int number, Optional<Spot> spot, Optional<StationRecord> station, Optional<Integer> newStation) {

    /** Before the first place. */
    static final PlacingRow START = new PlacingRow(0, Optional.empty(), Optional.empty(), Optional.empty());

    /** The start, then every place with its stations, old ones first. */
    static List<PlacingRow> of(Placing placing) {
        Map<Spot, LineRecord> known = new HashMap<>();
        placing.canyon()
                .line()
                .forEach(place -> known.put(new Spot.Known(place.obstacle().uid()), place));
        Map<Spot, List<Integer>> stations = new HashMap<>();
        for (int i = 0; i < placing.decisions().size(); i++) {
            if (placing.decisions().get(i) instanceof Decision.NewStation station) {
                stations.computeIfAbsent(station.at(), spot -> new ArrayList<>())
                        .add(i);
            }
        }
        List<PlacingRow> rows = new ArrayList<>();
        rows.add(START);
        for (int i = 0; i < placing.line().size(); i++) {
            Spot spot = placing.line().get(i);
            int number = i + 1;
            rows.add(new PlacingRow(number, Optional.of(spot), Optional.empty(), Optional.empty()));
            Optional.ofNullable(known.get(spot)).stream()
                    .flatMap(place -> place.stations().stream())
                    .forEach(station -> rows.add(
                            new PlacingRow(number, Optional.of(spot), Optional.of(station), Optional.empty())));
            stations.getOrDefault(spot, List.of())
                    .forEach(waypoint -> rows.add(
                            new PlacingRow(number, Optional.of(spot), Optional.empty(), Optional.of(waypoint))));
        }
        return rows;
    }

    /** Whether it is the same thing, whatever its number has become. */
    boolean is(PlacingRow other) {
        return spot.equals(other.spot)
                && newStation.equals(other.newStation)
                && station.map(one -> one.station().uid())
                        .equals(other.station.map(one -> one.station().uid()));
    }

    /** What a waypoint is that says where this is; empty for what is new and has a waypoint of its own. */
    Optional<Decision> position() {
        if (spot.isEmpty()) {
            return Optional.of(new Decision.CanyonStart());
        }
        if (station.isPresent()) {
            return Optional.of(
                    new Decision.StationPosition(station.get().station().uid()));
        }
        return newStation.isEmpty() && spot.get() instanceof Spot.Known known
                ? Optional.of(new Decision.PlacePosition(known.obstacle()))
                : Optional.empty();
    }
}
