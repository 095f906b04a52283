package thalweg.tui.screen;

import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import thalweg.body.ThingBody;
import thalweg.draft.DraftKey;
import thalweg.exchange.ImportPlan;
import thalweg.exchange.table.Columns;
import thalweg.exchange.table.Table;
import thalweg.ledger.Uid;
import thalweg.logbook.CanyonFilter;
import thalweg.logbook.Finding;
import thalweg.logbook.InView;
import thalweg.logbook.Inspection;
import thalweg.logbook.NotedTime;
import thalweg.logbook.PrivateNote;
import thalweg.logbook.RiggingNote;
import thalweg.logbook.Round;
import thalweg.logbook.RowOrder;
import thalweg.logbook.SheetNumber;
import thalweg.logbook.StationOrder;
import thalweg.logbook.StationRecord;
import thalweg.logbook.Trip;
import thalweg.placing.Placing;
import thalweg.rig.Cascade;
import thalweg.rig.CascadeOdds;
import thalweg.rig.RigAnswer;
import thalweg.rig.RigInput;
import thalweg.rig.RigPriority;
import thalweg.settings.Settings;
import thalweg.sheet.SheetContents;
import thalweg.text.Language;
import thalweg.tui.core.Effect;
import thalweg.units.UnitSystem;

/** The work that screens ask for. */
public sealed interface Ask extends Effect {

    /**
     * Canyons that are looked for; answered by {@link Told.CanyonsFound}.
     *
     * @param view which rows are to be read
     * @param keeps whether what is chosen stays chosen where it is found; else the list begins at the top
     */
    record FindCanyons(Finding finding, InView view, boolean keeps) implements Ask, OnlyLatest {}

    /** Rows of the list of canyons under that filter; answered by {@link Told.CanyonsRead}. */
    record ReadCanyons(RowOrder rows, CanyonFilter filter) implements Ask, OnlyLatest {}

    /** Parts that words find; answered by {@link Told.PartsFound}. */
    record FindParts(String words) implements Ask, OnlyLatest {}

    /**
     * Parts that words find and that are due; answered by {@link Told.DueFound}.
     *
     * @param canyon whose, if not those of all
     * @param days from today within which they are due
     */
    record FindDue(String words, Optional<Uid> canyon, int days, Settings settings, int most)
            implements Ask, OnlyLatest {

        /** The same, of which no part is listed: what is asked whatever is listed is asked alike. */
        public FindDue first() {
            return new FindDue(words, canyon, days, settings, 0);
        }
    }

    /**
     * How many parts there are that are due, where they are too many to be listed; answered by {@link Told.DueCounted}.
     *
     * @param find without words, over all canyons
     */
    record CountDue(FindDue find) implements Ask, OnlyLatest {}

    /**
     * The stations that words find, in order; answered by {@link Told.StationsFound}.
     *
     * @param kept the key of the row that was chosen before, which is chosen again where it is found
     * @param height rows in view
     * @param settings whose figures say what is due
     */
    record FindStations(String words, StationOrder order, OptionalLong kept, int height, Settings settings)
            implements Ask, OnlyLatest {

        /** Whether the other asks for the same list. */
        boolean sameList(FindStations other) {
            return words.equals(other.words) && order == other.order;
        }
    }

    /** Rows of the list of stations; answered by {@link Told.StationsRead}. */
    record ReadStations(RowOrder rows, Settings settings) implements Ask, OnlyLatest {}

    /** The list of the stations that words find, to a file; answered by {@link Told.SheetWritten}. */
    record WriteStations(String words, StationOrder order, Settings settings, String target, boolean overwrite)
            implements Ask {}

    /** What a trip of the records needs; answered by {@link Told.Planned}. */
    record PlanTrip(Trip trip, Settings settings) implements Ask, AfterPicture {}

    /** The list of what is due, to a file; answered by {@link Told.SheetWritten}. */
    record WriteDue(FindDue due, String target, boolean overwrite) implements Ask {}

    /** The records of the canyons that are looked for, to a file; answered by {@link Told.SheetWritten}. */
    record WriteCanyons(Finding finding, String target, boolean overwrite) implements Ask {}

    /** The list of all parts that words find, to a file; answered by {@link Told.SheetWritten}. */
    record WriteParts(String words, String target, boolean overwrite) implements Ask {}

    /** A canyon with everything in it; answered by {@link Told.CanyonLoaded}. */
    record LoadCanyon(Uid canyon) implements Ask, AfterPicture {}

    /** A file of records or a table to look into; answered by {@link Told.RecordsRead} or {@link Told.TableRead}. */
    record ReadRecords(String path) implements Ask, AfterPicture {}

    /** A table of which the columns are matched, to look what it would change; answered by {@link Told.TableUnderstood}. */
    record PreviewTable(String name, Table table, Columns columns) implements Ask, AfterPicture {}

    /** What a file of records would change, to be taken in; answered by {@link Told.TakenIn}. */
    record TakeIn(ImportPlan plan) implements Ask {}

    /** The name by which everything is signed from now on; answered by {@link Told.KeeperSet}. */
    record SetKeeper(String name) implements Ask {}

    /** A copy of the whole database, beside it; answered by {@link Told.BackedUp}. */
    record BackUp() implements Ask {}

    /** What is around that which a draft is about; answered by {@link Told.Surrounded}. */
    record FindSurrounding(DraftKey key) implements Ask {}

    /** A round with everything that was found on it; answered by {@link Told.Saved}. */
    record AddRoundDown(Round round, List<Found> found) implements Ask {
        public AddRoundDown {
            found = List.copyOf(found);
        }
    }

    /** A thing that was not there; answered by {@link Told.Saved}. */
    record SaveNew(ThingBody thing) implements Ask {}

    /** A thing that was changed; answered by {@link Told.Saved}. */
    record SaveChanged(ThingBody before, ThingBody after) implements Ask {}

    /** The inspections of one visit; answered by {@link Told.Saved}. */
    record AddInspections(List<Found> found) implements Ask {
        public AddInspections {
            found = List.copyOf(found);
        }
    }

    /**
     * What was found on one part.
     *
     * @param inspection all but its photos
     * @param photos each as FILE or FILE=CAPTION
     */
    record Found(Inspection inspection, List<String> photos) {
        public Found {
            photos = List.copyOf(photos);
        }
    }

    /** A part in the place of which another was put, and what was found on both; answered by {@link Told.Saved}. */
    record ReplacePart(ThingBody before, ThingBody after, Found found) implements Ask {}

    /** A round; answered by {@link Told.Saved}. */
    record AddRound(Round round) implements Ask {}

    /** A rigging note; answered by {@link Told.Saved}. */
    record AddNote(RiggingNote note) implements Ask {}

    /** A rig whose best focus is looked for; answered by {@link Told.BestFocusFound}. */
    record FindBestFocus(RigInput input) implements Ask, AfterPicture {}

    /** A rig whose points are to be rigged in every layout; answered by {@link Told.Compared}. */
    record Compare(RigInput input, RigPriority priority) implements Ask, AfterPicture {}

    /** A rig whose peaks are to have their range; answered by {@link Told.PeakRangeFound}. */
    record FindPeakRange(RigAnswer answer) implements Ask, AfterPicture {}

    /** The next trials of a cascade; answered by {@link Told.CascadeRan}. */
    record NextTrials(Cascade cascade, CascadeOdds before) implements Ask, AfterPicture {}

    /** A rig to compute and keep with a station; answered by {@link Told.Saved}. */
    record AttachAnalysis(StationRecord station, RigInput input) implements Ask {}

    /**
     * A sheet to write to a file; answered by {@link Told.SheetWritten}.
     *
     * @param canyon in which it is
     * @param station whose card it is; empty for the sheet of the whole canyon
     * @param language in which it is written
     * @param settings whose figures say what is due
     * @param givenTo to whom it is given; empty text where that is not noted
     * @param contents what it holds
     * @param since number of an earlier sheet, where what changed since is to be told
     * @param trip for which it is made, if it is for one
     */
    record WriteSheet(
            Uid canyon,
            Optional<Uid> station,
            SheetFormat format,
            Language language,
            String target,
            boolean overwrite,
            UnitSystem units,
            Settings settings,
            String givenTo,
            SheetContents contents,
            Optional<SheetNumber> since,
            Optional<Uid> trip)
            implements Ask {}

    /** A sheet as it would be written, to look at first; answered by {@link Told.SheetLookedAt}. */
    record LookAtSheet(WriteSheet sheet) implements Ask, AfterPicture {}

    /**
     * The sheets of the canyons that are looked for, into a folder; answered by {@link Told.SheetsWritten}.
     *
     * @param language in which they are written
     * @param settings whose figures say what is due
     * @param contents what they hold
     */
    record WriteSheets(
            Finding finding,
            SheetFormat format,
            Language language,
            String folder,
            boolean overwrite,
            UnitSystem units,
            Settings settings,
            SheetContents contents)
            implements Ask {}

    /** A file of waypoints to look into; answered by {@link Told.WaypointsRead}. */
    record ReadWaypoints(String path) implements Ask {}

    /** What was decided about waypoints; answered by {@link Told.Saved}. */
    record PlaceWaypoints(Placing placing) implements Ask {}

    /** Trips to one canyon, or to all; answered by {@link Told.TripsLoaded}. */
    record LoadTrips(Optional<Uid> canyon) implements Ask {}

    /** One trip with its canyon; answered by {@link Told.TripLoaded} or {@link Told.TripGone}. */
    record LoadTrip(Uid trip, Settings settings) implements Ask {}

    /** The times of a trip at one place as they are noted now; answered by {@link Told.Saved}. */
    record NoteTimes(Trip before, Uid place, NotedTime reached, NotedTime left) implements Ask {}

    /** Sheets given out of one canyon, or of all; answered by {@link Told.GivenLoaded}. */
    record LoadGiven(Optional<Uid> canyon) implements Ask {}

    /** A trip that is new or was changed; answered by {@link Told.Saved}. */
    record SaveTrip(Optional<Trip> before, Trip after) implements Ask {}

    /** A trip to take out of use; answered by {@link Told.Saved}. */
    record TakeOutTrip(Trip trip, String reason) implements Ask {}

    /** The one private note about a thing; blank text takes it away; answered by {@link Told.Saved}. */
    record SavePrivateNote(Uid about, List<PrivateNote> before, String text) implements Ask {
        public SavePrivateNote {
            before = List.copyOf(before);
        }
    }

    /** The formats of a sheet. */
    enum SheetFormat {
        HTML,
        PDF_A4,
        PDF_LETTER,
        PDF_POCKET,
        TEXT,
        MARKDOWN
    }
}
