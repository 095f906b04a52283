package thalweg.exchange.map;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import thalweg.ledger.Uid;
import thalweg.logbook.CanyonRecord;
import thalweg.logbook.LineRecord;
import thalweg.logbook.StationRecord;
import thalweg.place.PositionText;
import thalweg.route.Canyon;
import thalweg.route.Obstacle;
import thalweg.route.ObstacleKind;
import thalweg.route.Prose;
import thalweg.route.Station;
import thalweg.route.Times;
import thalweg.units.Length;

/** An invented canyon of which some things are known where they are. */
final class MapCanyons {

    private static long ids;

    private MapCanyons() {}

    static Uid uid() {
        ids++;
        return new Uid(new UUID(0x0190_0000_0000_7000L + ids, 0x8000_0000_0000_0000L + ids));
    }

    static CanyonRecord canyon(String name, String coordinates, LineRecord... line) {
        return new CanyonRecord(
                new Canyon(
                        uid(),
                        name,
                        List.of(),
                        "",
                        "",
                        Optional.empty(),
                        Optional.empty(),
                        coordinates.isEmpty() ? Optional.empty() : Optional.of(PositionText.parse(coordinates)),
                        Times.UNKNOWN,
                        Optional.empty(),
                        Prose.none(),
                        true),
                List.of(line));
    }

    static LineRecord drop(int number, String name, String coordinates, StationRecord... stations) {
        return new LineRecord(
                number,
                new Obstacle(
                        uid(),
                        uid(),
                        "V",
                        ObstacleKind.DROP,
                        name,
                        Optional.empty(),
                        Optional.of(Length.centimetres(1800)),
                        coordinates.isEmpty() ? Optional.empty() : Optional.of(PositionText.parse(coordinates)),
                        ""),
                List.of(stations));
    }

    static StationRecord station(String name, String coordinates) {
        return new StationRecord(
                new Station(
                        uid(),
                        uid(),
                        "V",
                        name,
                        Optional.empty(),
                        Optional.empty(),
                        coordinates.isEmpty() ? Optional.empty() : Optional.of(PositionText.parse(coordinates)),
                        Optional.empty(),
                        Prose.none()),
                List.of(),
                List.of(),
                List.of());
    }
}
