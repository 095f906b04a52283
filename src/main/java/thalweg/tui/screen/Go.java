package thalweg.tui.screen;

import java.util.List;
import java.util.Optional;
import thalweg.amend.Contents;
import thalweg.body.ThingBody;
import thalweg.exchange.ImportPlan;
import thalweg.fault.Sentence;
import thalweg.ledger.Uid;
import thalweg.logbook.AnchorRecord;
import thalweg.logbook.CanyonName;
import thalweg.logbook.CanyonRecord;
import thalweg.logbook.Entry;
import thalweg.logbook.Finding;
import thalweg.logbook.Inspection;
import thalweg.logbook.LocalRecord;
import thalweg.logbook.PartRecord;
import thalweg.logbook.PrivateNote;
import thalweg.logbook.RiggingNote;
import thalweg.logbook.Round;
import thalweg.logbook.StationOrder;
import thalweg.logbook.StationRecord;
import thalweg.logbook.Trip;
import thalweg.logbook.TripInCanyon;
import thalweg.placing.Placing;
import thalweg.rig.RigInput;
import thalweg.route.Anchor;
import thalweg.route.Canyon;
import thalweg.route.Obstacle;
import thalweg.route.Part;
import thalweg.route.Station;
import thalweg.tui.core.Destination;
import thalweg.tui.widget.Paragraph;
import thalweg.why.Question;

/** The screens there are, as places to go. In a place to edit, an empty record means a new one. */
public sealed interface Go extends Destination {

    /** All canyons. */
    record Canyons() implements Go {}

    /** The name of who signs, to set. */
    record SetKeeper() implements Go {}

    /** A file of records to name. */
    record ReadRecords() implements Go {}

    /** What a file of records would change, to take in or to leave. */
    record TakeIn(String file, ImportPlan plan, Optional<Told.TableUnderstood> table) implements Go {

        /** What a file of records would change. */
        public TakeIn(String file, ImportPlan plan) {
            this(file, plan, Optional.empty());
        }
    }

    /** The columns of a table to match with fields of the records. */
    record MatchColumns(Told.TableRead table) implements Go {}

    /** A copy of the whole database to write. */
    record BackUp() implements Go {}

    /** The drafts that wait. */
    record Drafts() implements Go {}

    /** Parts of all canyons, to search among. */
    record Parts() implements Go {}

    /** Stations of all canyons. */
    record Stations() implements Go {}

    /** The list of the stations that words find, to be written to a file. */
    record WriteStations(String words, StationOrder order) implements Go {}

    /** Parts that are due, of one canyon or all. */
    record DueParts(Optional<CanyonName> canyon) implements Go {}

    /** The parts that are due, to be written to a file. */
    record WriteDue(Ask.FindDue due) implements Go {}

    /** The sheets of so many canyons that are looked for. */
    record WriteSheets(Finding finding, int canyons) implements Go {}

    /** The canyons that were found, to be written to a file. */
    record WriteCanyons(Finding finding, int canyons) implements Go {}

    /** The parts that words find, to be written to a file. */
    record WriteParts(String words) implements Go {}

    /** One canyon and its line. */
    record OneCanyon(Uid canyon) implements Go {}

    /** The profile of a canyon, at one of its places or stations, if one is named. */
    record CanyonProfile(Uid canyon, Optional<Uid> at) implements Go {}

    /** One station. */
    record OneStation(Uid canyon, Uid station) implements Go {}

    /** One part with everything that was found on it. */
    record OnePart(Uid canyon, Uid part) implements Go {}

    /** The parts of a station over the years, with one of them chosen, if it is named. */
    record OverTheYears(Uid canyon, Uid station, Optional<Uid> part) implements Go {}

    /** The rounds of a canyon. */
    record Rounds(Uid canyon) implements Go {}

    /** Down a canyon, station by station; after a trip, with what is known of that. */
    record GoDown(CanyonRecord canyon, Optional<Trip> trip) implements Go {

        /** Without a trip that is known. */
        public GoDown(CanyonRecord canyon) {
            this(canyon, Optional.empty());
        }
    }

    /** What was changed, in one canyon or in all. */
    record Changes(Optional<Uid> canyon, String canyonName) implements Go {}

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

    /** A part in the place of which another was put, perhaps on one of those rounds. */
    record Replace(PartRecord part, List<Entry<Round>> rounds) implements Go {
        public Replace {
            rounds = List.copyOf(rounds);
        }
    }

    /**
     * One visit: an inspection of every part of a station, perhaps on one of those rounds.
     *
     * @param first the part to begin with, if not the first
     */
    record Inspect(StationRecord station, List<Entry<Round>> rounds, Optional<Uid> first) implements Go {
        public Inspect {
            rounds = List.copyOf(rounds);
        }
    }

    /** An inspection to correct. */
    record CorrectInspection(PartRecord part, Entry<Inspection> wrong, List<Entry<Round>> rounds) implements Go {
        public CorrectInspection {
            rounds = List.copyOf(rounds);
        }
    }

    /** A rigging note to correct. */
    record CorrectNote(String stationName, Entry<RiggingNote> wrong) implements Go {}

    /** A round to enter or correct. */
    record EditRound(Uid canyon, String canyonName, Optional<Entry<Round>> wrong) implements Go {}

    /** An entry to withdraw, told in one line. */
    record Withdraw(Uid entry, String line) implements Go {}

    /** A thing to take out of use, with what is in it. */
    record TakeOut(ThingBody thing, Contents contents) implements Go {}

    /** A thing to put into another. */
    record MoveTo(ThingBody thing, List<Target> targets) implements Go {
        public MoveTo {
            targets = List.copyOf(targets);
        }
    }

    /**
     * What a thing could be put into.
     *
     * @param uid of it
     * @param label by which people know it
     * @param within what is in it now, in order
     */
    record Target(Uid uid, String label, List<ThingBody> within) {
        public Target {
            within = List.copyOf(within);
        }
    }

    /** A rigging note to write. */
    record WriteNote(Uid station, String stationName) implements Go {}

    /**
     * The rig of an anchor.
     *
     * @param kept the analysis that was kept and is begun with, if there is one
     * @param analysis its name
     */
    record Rig(StationRecord station, AnchorRecord anchor, Optional<RigInput> kept, Optional<Uid> analysis)
            implements Go {

        /** The rig of the points as they are entered. */
        public Rig(StationRecord station, AnchorRecord anchor) {
            this(station, anchor, Optional.empty(), Optional.empty());
        }
    }

    /** The points of a rig in every layout; stated says whether somebody stated load and material. */
    record Compare(RigInput input, boolean stated) implements Go {}

    /** Why the figures of a rig are what they are. */
    record Why(Question question) implements Go {}

    /**
     * A sheet to write.
     *
     * @param canyon in which it is
     * @param name of the canyon, or of the station
     * @param station whose card it is; empty for the sheet of the whole canyon
     * @param local what this database keeps to itself around the canyon: earlier sheets, trips
     * @param trip for which it is made at first, if it is for one
     */
    record WriteSheet(Uid canyon, String name, Optional<Uid> station, LocalRecord local, Optional<Uid> trip)
            implements Go {

        /** The sheet of a canyon. */
        WriteSheet(Uid canyon, String name, LocalRecord local) {
            this(canyon, name, Optional.empty(), local, Optional.empty());
        }

        /** What it is about. */
        Uid about() {
            return station.orElse(canyon);
        }
    }

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
    record PlaceWaypoints(Placing start, String file, List<Sentence> remarks) implements Go {
        public PlaceWaypoints {
            remarks = List.copyOf(remarks);
            if (start.waypoints().isEmpty()) {
                throw new IllegalArgumentException("there is a waypoint to place");
            }
        }
    }

    /** The trips to one canyon, or to all. */
    record Trips(Optional<CanyonName> canyon) implements Go {}

    /** One trip: what is planned, the times at each place, what was found. */
    record OneTrip(Uid trip) implements Go {}

    /** The times at one place of a trip to type. */
    record TypeTimes(Trip trip, Uid place, String label) implements Go {}

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
