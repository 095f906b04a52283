package thalweg.tui.screen;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import thalweg.exchange.gpx.Waypoint;
import thalweg.ledger.Uid;
import thalweg.logbook.LineRecord;
import thalweg.logbook.StationRecord;
import thalweg.place.Position;
import thalweg.placing.Decision;
import thalweg.placing.Placing;
import thalweg.placing.Spot;
import thalweg.route.ObstacleKind;
import thalweg.tui.core.Style;
import thalweg.tui.core.Surroundings;
import thalweg.tui.widget.Paragraph;

/** What waypoints and the line are called while one is put onto the other, and what was decided, in words. */
final class PlacingWords {

    private final Placing placing;
    private final Surroundings around;
    private final Map<Spot, Integer> numbers = new HashMap<>();
    private final Map<Uid, LineRecord> places = new HashMap<>();

    PlacingWords(Placing placing, Surroundings around) {
        this.placing = placing;
        this.around = around;
        placing.line().forEach(spot -> numbers.put(spot, numbers.size() + 1));
        placing.canyon().line().forEach(place -> places.put(place.obstacle().uid(), place));
    }

    /** Its number in the file, which tells those of one name apart, and its name. */
    String waypoint(int index) {
        String name = placing.waypoints().get(index).name();
        return (index + 1) + " " + (name.isEmpty() ? around.say("placing.no_name") : name);
    }

    /** The name of the station that a waypoint becomes. */
    String stationName(int index) {
        Waypoint waypoint = placing.waypoints().get(index);
        return waypoint.name().isEmpty() ? around.say("placing.station_name", index + 1) : waypoint.name();
    }

    /** What was decided about a waypoint. */
    String state(int index) {
        Decision decision = placing.decisions().get(index);
        if (decision instanceof Decision.NewPlace place) {
            return around.say("placing.state.new_place", place(new Spot.Made(index), place.kind()));
        }
        if (decision instanceof Decision.PlacePosition at) {
            ObstacleKind kind = Optional.ofNullable(places.get(at.obstacle()))
                    .orElseThrow()
                    .obstacle()
                    .kind();
            return around.say("placing.state.position", place(new Spot.Known(at.obstacle()), kind));
        }
        if (decision instanceof Decision.StationPosition at) {
            return around.say("placing.state.station", stationName(at.station()));
        }
        if (decision instanceof Decision.NewStation station) {
            return around.say("placing.state.new_station", place(station.at(), kind(station.at())));
        }
        String key = decision instanceof Decision.CanyonStart
                ? "placing.state.start"
                : decision instanceof Decision.LeftOut ? "placing.state.left_out" : "placing.state.undecided";
        return around.say(key);
    }

    private String stationName(Uid station) {
        return placing.canyon().station(station).orElseThrow().station().name();
    }

    /** "drop 3". */
    private String place(Spot spot, ObstacleKind kind) {
        return Looks.word(around, "obstacle", kind) + " "
                + Optional.ofNullable(numbers.get(spot)).orElseThrow();
    }

    /** What kind of place that is, old or new. */
    private ObstacleKind kind(Spot spot) {
        if (spot instanceof Spot.Made made
                && placing.decisions().get(made.waypoint()) instanceof Decision.NewPlace place) {
            return place.kind();
        }
        return known(spot).orElseThrow().obstacle().kind();
    }

    private Optional<LineRecord> known(Spot spot) {
        return spot instanceof Spot.Known known ? Optional.ofNullable(places.get(known.obstacle())) : Optional.empty();
    }

    Style style(int index) {
        Decision decision = placing.decisions().get(index);
        if (decision.takes()) {
            return Style.GOOD;
        }
        return decision instanceof Decision.LeftOut ? Style.FAINT : Style.MIND;
    }

    /** A row of the line. */
    String row(PlacingRow row) {
        if (row.spot().isEmpty()) {
            return around.say("placing.start");
        }
        if (row.station().isPresent()) {
            return "   " + row.station().get().station().name();
        }
        if (row.newStation().isPresent()) {
            int waypoint = row.newStation().get();
            return "   "
                    + (placing.decisions().get(waypoint) instanceof Decision.NewStation station ? station.name() : "");
        }
        Spot spot = row.spot().get();
        return known(spot)
                .map(place -> new LineRecord(row.number(), place.obstacle(), place.stations()))
                .map(place -> About.placeName(place, around))
                .orElseGet(() -> newPlace(row.number(), spot));
    }

    private String newPlace(int number, Spot spot) {
        String name = spot instanceof Spot.Made made
                ? placing.waypoints().get(made.waypoint()).name()
                : "";
        return Stream.of(number + " " + Looks.word(around, "obstacle", kind(spot)), name)
                .filter(text -> !text.isEmpty())
                .collect(Collectors.joining(", "));
    }

    /** What is known of where a row of the line is, and what will be. */
    String mark(PlacingRow row) {
        Optional<Decision> position = row.position();
        if (position.isEmpty()) {
            return around.say("placing.mark.new");
        }
        boolean had = before(row).isPresent();
        if (placing.decisions().contains(position.get())) {
            return around.say(had ? "placing.mark.replaced" : "placing.mark.gets");
        }
        return had ? around.say("placing.mark.has") : "";
    }

    /** The coordinates that a row of the line had before. */
    Optional<Position> before(PlacingRow row) {
        if (row.spot().isEmpty()) {
            return placing.canyon().canyon().position();
        }
        Optional<StationRecord> station = row.station();
        return station.isPresent()
                ? station.get().station().position()
                : known(row.spot().get()).flatMap(place -> place.obstacle().position());
    }

    /** Elevation as the file has it, empty text where it has none. */
    String elevation(int index) {
        return placing.waypoints()
                .get(index)
                .elevation()
                .map(height -> height.print(around.units()))
                .orElse("");
    }

    /** Everything that the file says of a waypoint. */
    List<Paragraph> about(int index) {
        Waypoint waypoint = placing.waypoints().get(index);
        List<Paragraph> text = new ArrayList<>();
        text.add(Paragraph.of(around.labelled(waypoint(index), state(index)), Style.STRONG));
        text.add(Paragraph.of(
                waypoint.position().printDecimal() + "   " + waypoint.position().printMinutes()));
        text.add(Paragraph.of(
                waypoint.elevation().isEmpty()
                        ? around.say("placing.no_elevation")
                        : around.say("placing.elevation", elevation(index))));
        if (!waypoint.note().isEmpty()) {
            text.add(Paragraph.of(waypoint.note()));
        }
        String origin = around.say(
                waypoint.origin() == Waypoint.Origin.WAYPOINT ? "placing.of_itself" : "placing.of_route",
                waypoint.line());
        String rest = Stream.of(origin, waypoint.time(), waypoint.symbol(), waypoint.type())
                .filter(word -> !word.isEmpty())
                .collect(Collectors.joining("; "));
        text.add(Paragraph.of(rest, Style.FAINT));
        return text;
    }
}
