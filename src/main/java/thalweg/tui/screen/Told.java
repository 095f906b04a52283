package thalweg.tui.screen;

import java.util.List;
import java.util.Map;
import thalweg.ledger.Uid;
import thalweg.logbook.CanyonRecord;
import thalweg.logbook.CanyonRow;
import thalweg.rig.KeptRig;
import thalweg.tui.core.Message;

/** What comes of the work that screens ask for. */
public sealed interface Told extends Message {

    /**
     * Canyons that were found.
     *
     * @param words that were asked for
     * @param rows in the order of their names
     * @param all how many canyons there are in the database
     * @param spare an id for a new canyon
     */
    record CanyonsFound(String words, List<CanyonRow> rows, int all, Uid spare) implements Told {
        public CanyonsFound {
            rows = List.copyOf(rows);
        }
    }

    /**
     * A canyon.
     *
     * @param record with everything in it
     * @param rigs of its analyses, by entry; what this version cannot read is missing
     * @param spare an id for a new thing in it
     */
    record CanyonLoaded(CanyonRecord record, Map<Uid, KeptRig> rigs, Uid spare) implements Told {
        public CanyonLoaded {
            rigs = Map.copyOf(rigs);
        }
    }

    /** What was entered is in the database. */
    record Saved() implements Told {}

    /** A sheet was written. */
    record SheetWritten(String target) implements Told {}
}
