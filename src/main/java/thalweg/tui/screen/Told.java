package thalweg.tui.screen;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import thalweg.amend.ChangeView;
import thalweg.draft.DraftKey;
import thalweg.draft.KeptDraft;
import thalweg.due.DueCount;
import thalweg.due.FoundDue;
import thalweg.exchange.ImportPlan;
import thalweg.exchange.gpx.GpxFile;
import thalweg.exchange.table.Table;
import thalweg.exchange.table.TableKind;
import thalweg.exchange.table.TablePlan;
import thalweg.exchange.table.TableWords;
import thalweg.exchange.table.Understood;
import thalweg.fault.Sentence;
import thalweg.ledger.Uid;
import thalweg.logbook.CanyonList;
import thalweg.logbook.CanyonRecord;
import thalweg.logbook.Finding;
import thalweg.logbook.FoundCanyon;
import thalweg.logbook.FoundParts;
import thalweg.logbook.GivenSheet;
import thalweg.logbook.ListedStation;
import thalweg.logbook.LocalRecord;
import thalweg.logbook.RowOrder;
import thalweg.logbook.TripInCanyon;
import thalweg.plan.PacedTrip;
import thalweg.plan.Plan;
import thalweg.plan.PlannedAt;
import thalweg.rig.BestFocus;
import thalweg.rig.Cascade;
import thalweg.rig.CascadeOdds;
import thalweg.rig.KeptRig;
import thalweg.rig.PeakRange;
import thalweg.rig.RigAnswer;
import thalweg.rig.RigComparison;
import thalweg.rig.RigInput;
import thalweg.tui.core.Message;

/** What comes of the work that screens ask for. */
public sealed interface Told extends Message {

    /**
     * What was found among canyons.
     *
     * @param found in the order of their names, and the rows that may be in view
     * @param all how many canyons there are in the database
     * @param spare an id for a new canyon
     */
    record CanyonsFound(Ask.FindCanyons asked, CanyonList found, int all, Uid spare) implements Told {

        /** What was looked for. */
        Finding finding() {
            return asked.finding();
        }
    }

    /** Rows of the list of canyons, by key. */
    record CanyonsRead(Ask.ReadCanyons asked, Map<Long, FoundCanyon> rows) implements Told {
        public CanyonsRead {
            rows = Map.copyOf(rows);
        }
    }

    /**
     * Stations that were found.
     *
     * @param order of all that were found
     * @param chosen the row that was chosen before, or the first
     * @param rows those around it
     * @param all how many stations there are, whatever was looked for
     */
    record StationsFound(Ask.FindStations asked, RowOrder order, int chosen, Map<Long, ListedStation> rows, int all)
            implements Told {
        public StationsFound {
            rows = Map.copyOf(rows);
        }
    }

    /** Rows of the list of stations, by key. */
    record StationsRead(Map<Long, ListedStation> rows) implements Told {
        public StationsRead {
            rows = Map.copyOf(rows);
        }
    }

    /** What a trip needs. */
    record Planned(Plan plan) implements Told {}

    /** What was found to be due. */
    record DueFound(Ask.FindDue asked, FoundDue found) implements Told {}

    /** What is due was counted. */
    record DueCounted(Ask.FindDue asked, DueCount count) implements Told {}

    /**
     * Parts that were found.
     *
     * @param words that were looked for
     * @param found as far as they can be shown
     */
    record PartsFound(String words, FoundParts found) implements Told {}

    /**
     * A canyon.
     *
     * @param record with everything in it
     * @param local what this database keeps to itself around it
     * @param rigs of its analyses, by entry; what this version cannot read is missing
     * @param spare an id for a new thing in it
     */
    record CanyonLoaded(CanyonRecord record, LocalRecord local, Map<Uid, KeptRig> rigs, Uid spare) implements Told {
        public CanyonLoaded {
            rigs = Map.copyOf(rigs);
        }
    }

    /** A canyon is not in use any more. */
    record CanyonGone(Uid canyon) implements Told {}

    /** Where the focus of a rig would spare its weakest point most. */
    record BestFocusFound(RigInput input, BestFocus best) implements Told {}

    /** The layouts side by side. */
    record Compared(RigComparison comparison) implements Told {}

    /** Between what the peaks of a rig lie. */
    record PeakRangeFound(RigAnswer answer, PeakRange range) implements Told {}

    /** What the trials of a cascade have come to so far. */
    record CascadeRan(Cascade cascade, CascadeOdds odds) implements Told {}

    /**
     * What was entered is in the database.
     *
     * @param remarks what contradicts itself in the records since then, one sentence each
     */
    record Saved(List<Sentence> remarks) implements Told {
        public Saved {
            remarks = List.copyOf(remarks);
        }
    }

    /**
     * A change was taken back or brought again.
     *
     * @param change as it was made
     * @param taken whether it was taken back; else it was brought again
     */
    record Turned(ChangeView change, boolean taken) implements Told {}

    /** Changes, newest first. */
    record ChangesListed(List<ChangeView> changes) implements Told {
        public ChangesListed {
            changes = List.copyOf(changes);
        }
    }

    /** A change with everything that it did. */
    record ChangeLoaded(ChangeView change) implements Told {}

    /**
     * A file of waypoints was looked into.
     *
     * @param name of the file
     * @param findings what is wrong with it, one line each; then nothing is taken from it
     * @param file what it holds
     */
    record WaypointsRead(String name, List<Sentence> findings, GpxFile file) implements Told {
        public WaypointsRead {
            findings = List.copyOf(findings);
        }
    }

    /**
     * A sheet as it would be written.
     *
     * @param lines of its plain text, in order
     * @param target where it would be written
     * @param bytes of the file in the form that was chosen; its number makes it a little longer
     * @param there whether that file is there already
     */
    record SheetLookedAt(List<String> lines, String target, long bytes, boolean there) implements Told {
        public SheetLookedAt {
            lines = List.copyOf(lines);
        }
    }

    /**
     * A sheet was written.
     *
     * @param number under which it was noted, as it stands on the sheet; empty where nothing was noted
     */
    record SheetWritten(String target, Optional<String> number) implements Told {}

    /** So many sheets were written into a folder. */
    record SheetsWritten(String folder, int sheets) implements Told {}

    /**
     * Trips.
     *
     * @param trips in turn
     * @param spare an id for a new one
     */
    record TripsLoaded(List<TripInCanyon> trips, Uid spare) implements Told {
        public TripsLoaded {
            trips = List.copyOf(trips);
        }
    }

    /**
     * A trip.
     *
     * @param shown it
     * @param canyon to which it goes
     * @param planned when the group should have passed each place, by its number; empty where nobody is entered to go
     * @param paced how it went against the figures
     * @param local what this database keeps to itself around that canyon
     */
    record TripLoaded(
            TripInCanyon shown,
            CanyonRecord canyon,
            Map<Integer, PlannedAt> planned,
            PacedTrip paced,
            LocalRecord local)
            implements Told {
        public TripLoaded {
            planned = Map.copyOf(planned);
        }
    }

    /** A trip is not in use any more. */
    record TripGone(Uid trip) implements Told {}

    /**
     * A table, of which nobody has said yet what its columns are.
     *
     * @param name of the file
     * @param text of the file
     * @param table as it is read where nobody says what stands between its cells
     * @param findings what is wrong with it then
     * @param kind that its rows seem to be
     * @param words by which columns are guessed
     */
    record TableRead(
            String name, String text, Table table, List<Sentence> findings, Optional<TableKind> kind, TableWords words)
            implements Told {
        public TableRead {
            findings = List.copyOf(findings);
        }
    }

    /** What a table would change, and its first rows as they are understood. */
    record TableUnderstood(String name, TablePlan plan, List<Understood> first) implements Told {
        public TableUnderstood {
            first = List.copyOf(first);
        }
    }

    /**
     * A file of records was looked into.
     *
     * @param name of the file
     * @param findings what is wrong with it, one line each; then the plan is empty
     * @param plan what it would change
     */
    record RecordsRead(String name, List<Sentence> findings, ImportPlan plan) implements Told {
        public RecordsRead {
            findings = List.copyOf(findings);
        }
    }

    /** Everything is signed by that name from now on. */
    record KeeperSet(String name) implements Told {}

    /** A file of records was taken in; the database as it was before is kept there. */
    record TakenIn(String backup) implements Told {}

    /** A copy of the whole database is written there. */
    record BackedUp(String target) implements Told {}

    /** The draft of a form, if there is one. */
    record DraftFound(Optional<KeptDraft> draft) implements Told {}

    /** All drafts that wait, newest first. */
    record DraftsListed(List<KeptDraft> drafts) implements Told {
        public DraftsListed {
            drafts = List.copyOf(drafts);
        }
    }

    /**
     * The canyon around that which a draft is about, as it is now.
     *
     * @param canyon empty where it is out of use, or where the draft is about no canyon that is there
     * @param spare an id for a new thing
     */
    record Surrounded(DraftKey key, Optional<CanyonLoaded> canyon, Uid spare) implements Told {}

    /** Sheets that were given out. */
    record GivenLoaded(List<GivenSheet> sheets) implements Told {
        public GivenLoaded {
            sheets = List.copyOf(sheets);
        }
    }
}
