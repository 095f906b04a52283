package thalweg.tui.screen;

import java.util.List;
import java.util.Optional;
import thalweg.ledger.Uid;
import thalweg.logbook.AnchorRecord;
import thalweg.logbook.CanyonName;
import thalweg.logbook.CanyonRecord;
import thalweg.logbook.PrivateNote;
import thalweg.logbook.StationRecord;
import thalweg.logbook.Trip;
import thalweg.logbook.TripInCanyon;
import thalweg.placing.Placing;
import thalweg.route.Anchor;
import thalweg.route.Canyon;
import thalweg.route.Obstacle;
import thalweg.route.Part;
import thalweg.route.Station;
import thalweg.tui.core.Destination;
import thalweg.tui.widget.Paragraph;

/** The screens there are, as places to go. In a place to edit, an empty record means a new one. */
public sealed interface Go extends Destination {

    /** All canyons. */
    record Canyons() implements Go {}

    /** One canyon and its line. */
    record OneCanyon(Uid canyon) implements Go {}

    /** The profile of a canyon, at one of its places or stations, if one is named. */
    record CanyonProfile(Uid canyon, Optional<Uid> at) implements Go {}

    /** One station. */
    record OneStation(Uid canyon, Uid station) implements Go {}

    /** A canyon to edit. */
    record EditCanyon(Uid uid, Optional<Canyon> canyon) implements Go {}

    /** A place on the line to edit; a new one stands at that order. */
    record EditObstacle(Uid uid, Uid canyon, String order, Optional<Obstacle> obstacle) implements Go {}

    /** A station to edit; a new one stands at that order. */
    record EditStation(Uid uid, Uid obstacle, String order, Optional<Station> station) implements Go {}

    /** An anchor to edit; a new one stands at that order. */
    record EditAnchor(Uid uid, Uid station, String order, Optional<Anchor> anchor) implements Go {}

    /** A part to edit; a new one stands at that order. */
    record EditPart(Uid uid, Uid anchor, String order, Optional<Part> part) implements Go {}

    /** One visit: an inspection of every part of a station. */
    record Inspect(StationRecord station) implements Go {}

    /** A rigging note to write. */
    record WriteNote(Uid station, String stationName) implements Go {}

    /** The rig of an anchor. */
    record Rig(StationRecord station, AnchorRecord anchor) implements Go {}

    /** A sheet to write. */
    record WriteSheet(Uid canyon, String canyonName) implements Go {}

    /**
     * A file of waypoints to name.
     *
     * @param canyon on whose line they go; empty for a new one
     * @param spare the id of the new one
     */
    record ReadWaypoints(Optional<CanyonRecord> canyon, Uid spare) implements Go {}

    /**
     * Waypoints to place on a line, at least one.
     *
     * @param start with nothing decided yet
     * @param file its name
     * @param remarks what a person should know about the file
     */
    record PlaceWaypoints(Placing start, String file, List<String> remarks) implements Go {
        public PlaceWaypoints {
            remarks = List.copyOf(remarks);
            if (start.waypoints().isEmpty()) {
                throw new IllegalArgumentException("there is a waypoint to place");
            }
        }
    }

    /** The trips to one canyon, or to all. */
    record Trips(Optional<CanyonName> canyon) implements Go {}

    /** A trip to edit. */
    record EditTrip(Uid uid, CanyonName canyon, Optional<Trip> trip) implements Go {}

    /** A trip to take out of use. */
    record TakeOutTrip(TripInCanyon trip) implements Go {}

    /** The sheets given out of one canyon, or of all. */
    record Given(Optional<CanyonName> canyon) implements Go {}

    /** The private note about a thing to edit. */
    record EditPrivateNote(Uid about, String label, List<PrivateNote> before) implements Go {
        public EditPrivateNote {
            before = List.copyOf(before);
        }
    }

    /** A text to read. */
    record Read(String title, List<Paragraph> text) implements Go {
        public Read {
            text = List.copyOf(text);
        }
    }
}
