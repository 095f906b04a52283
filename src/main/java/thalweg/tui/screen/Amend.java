package thalweg.tui.screen;

import java.util.List;
import java.util.Optional;
import thalweg.amend.ThingChange;
import thalweg.body.ThingBody;
import thalweg.ledger.Uid;
import thalweg.logbook.Inspection;
import thalweg.logbook.RiggingNote;
import thalweg.logbook.Round;
import thalweg.tui.core.Effect;

/** The work that screens ask for when something that is there is put right, taken back, or told. */
public sealed interface Amend extends Effect {

    /** A thing to take out of use; answered by {@link Told.Saved}. */
    record TakeOut(ThingBody thing, String reason) implements Amend {}

    /** Things to give other places, all or none; answered by {@link Told.Saved}. */
    record Rearranged(List<ThingChange> changes) implements Amend {
        public Rearranged {
            changes = List.copyOf(changes);
        }
    }

    /** An entry to withdraw; answered by {@link Told.Saved}. */
    record Withdraw(Uid entry, String reason) implements Amend {}

    /**
     * An inspection in the place of one that was wrong; answered by {@link Told.Saved}.
     *
     * @param photos more of them, each as FILE or FILE=CAPTION
     */
    record CorrectInspection(Uid wrong, Inspection right, List<String> photos, String reason) implements Amend {
        public CorrectInspection {
            photos = List.copyOf(photos);
        }
    }

    /** A rigging note in the place of one that was wrong; answered by {@link Told.Saved}. */
    record CorrectNote(Uid wrong, RiggingNote right, String reason) implements Amend {}

    /** A round in the place of one that was wrong; answered by {@link Told.Saved}. */
    record CorrectRound(Uid wrong, Round right, String reason) implements Amend {}

    /** The latest change to take back; answered by {@link Told.Turned}. */
    record Undo() implements Amend {}

    /** What was taken back last to bring again; answered by {@link Told.Turned}. */
    record Redo() implements Amend {}

    /** A change to take back; answered by {@link Told.Turned}. */
    record TakeBack(long key) implements Amend {}

    /** A change to bring again; answered by {@link Told.Turned}. */
    record BringAgain(long key) implements Amend {}

    /** The latest changes, of one canyon or of all; answered by {@link Told.ChangesListed}. */
    record ListChanges(Optional<Uid> canyon) implements Amend {}

    /** A change with everything that it did; answered by {@link Told.ChangeLoaded}. */
    record LoadChange(long key) implements Amend {}
}
