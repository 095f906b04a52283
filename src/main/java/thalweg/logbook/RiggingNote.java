package thalweg.logbook;

import thalweg.ledger.Uid;
import thalweg.route.PartialDate;
import thalweg.route.Prose;

/**
 * How somebody rigged a station, and how it went. It never changes.
 *
 * @param station that was rigged
 * @param on when
 * @param by who; empty text where unknown
 * @param prose what they wrote; not empty
 */
public record RiggingNote(Uid station, PartialDate on, String by, Prose<NoteText> prose) {

    public RiggingNote {
        if (prose.texts().isEmpty()) {
            throw new IllegalArgumentException("a rigging note says something");
        }
    }
}
