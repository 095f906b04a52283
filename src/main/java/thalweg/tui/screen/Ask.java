package thalweg.tui.screen;

import java.util.List;
import thalweg.body.ThingBody;
import thalweg.ledger.Uid;
import thalweg.logbook.Inspection;
import thalweg.logbook.RiggingNote;
import thalweg.logbook.Round;
import thalweg.logbook.StationRecord;
import thalweg.rig.RigInput;
import thalweg.tui.core.Effect;
import thalweg.units.UnitSystem;

/** The work that screens ask for. */
public sealed interface Ask extends Effect {

    /** Canyons that words find; answered by {@link Told.CanyonsFound}. */
    record FindCanyons(String words) implements Ask {}

    /** A canyon with everything in it; answered by {@link Told.CanyonLoaded}. */
    record LoadCanyon(Uid canyon) implements Ask {}

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

    /** A round; answered by {@link Told.Saved}. */
    record AddRound(Round round) implements Ask {}

    /** A rigging note; answered by {@link Told.Saved}. */
    record AddNote(RiggingNote note) implements Ask {}

    /** A rig to compute and keep with a station; answered by {@link Told.Saved}. */
    record AttachAnalysis(StationRecord station, RigInput input) implements Ask {}

    /** A sheet to write to a file; answered by {@link Told.SheetWritten}. */
    record WriteSheet(Uid canyon, SheetFormat format, String target, boolean overwrite, UnitSystem units)
            implements Ask {}

    /** The formats of a sheet. */
    enum SheetFormat {
        HTML,
        TEXT
    }
}
