package thalweg.service;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import thalweg.body.Entered;
import thalweg.body.ThingBody;
import thalweg.fault.ChangedMeanwhileException;
import thalweg.fault.Sentence;
import thalweg.json.Json;
import thalweg.ledger.Revision;
import thalweg.storage.Batch;

/** Enters a new thing or a new state of one, as a revision. */
public final class SaveThing {

    private final Session session;

    public SaveThing(Session session) {
        this.session = session;
    }

    /**
     * Enters a thing that was not there.
     *
     * @throws ChangedMeanwhileException when what it belongs to is out of use
     * @throws thalweg.fault.StoreException when the database cannot be written
     */
    public void anew(ThingBody entered) {
        append(List.of(first(entered)));
    }

    /** The revision with which that thing begins. */
    Revision first(ThingBody entered) {
        ThingBody thing = Entered.of(entered);
        refuseHidden(thing);
        return Revision.first(thing.uid(), thing.type().word(), thing.body(), session.keeper(), session.now());
    }

    /**
     * A thing before and after a change.
     *
     * @param before the state from which the change was made
     * @param after the same thing, changed
     */
    public record Changed(ThingBody before, ThingBody after) {}

    /**
     * Enters a new state of a thing; nothing is written where nothing differs.
     *
     * @param before the state from which the change was made
     * @param entered the same thing, changed
     * @throws ChangedMeanwhileException when the thing no longer is as it was before
     */
    public void changed(ThingBody before, ThingBody entered) {
        changed(List.of(new Changed(before, entered)));
    }

    /**
     * Enters new states of several things, all or none.
     *
     * @throws ChangedMeanwhileException when one of them no longer is as it was before, or what it would belong to is out
     *     of use
     */
    public void changed(List<Changed> changes) {
        List<Revision> revisions = new ArrayList<>();
        changes.forEach(change -> next(change.before(), change.after()).ifPresent(revisions::add));
        append(revisions);
    }

    /** The revision that says what has changed; empty where nothing has. */
    Optional<Revision> next(ThingBody before, ThingBody entered) {
        ThingBody after = Entered.of(entered);
        if (before.body().equals(after.body())) {
            return Optional.empty();
        }
        refuseHidden(after);
        Revision head = head(before);
        Json.Fields kept = after.keepingUnknown(head.body(), before.body());
        return Optional.of(head.next(kept, false, session.keeper(), session.now()));
    }

    /**
     * Takes a thing out of use, with what is in it. It stays in the ledger and can be brought back.
     *
     * @param thing as it is
     * @param reason why; kept with it
     * @throws ChangedMeanwhileException when the thing no longer is as it was
     */
    public void removed(ThingBody thing, String reason) {
        Revision head = head(thing);
        Json.Fields body = head.body().with(ThingBody.REMOVED_BECAUSE, Json.of(Entered.reason(reason)));
        append(List.of(head.next(body, true, session.keeper(), session.now())));
    }

    /** What a thing belongs to may be as new as itself, and come before it in the same transaction. */
    private void refuseHidden(ThingBody thing) {
        boolean hidden = thing.parent()
                .filter(within -> session.ledger().head(within).isPresent())
                .filter(within -> !session.things().isInUse(within))
                .isPresent();
        if (hidden) {
            throw new ChangedMeanwhileException(Sentence.of(
                    "What the {0} \"{1}\" belongs to was taken out of use in the meantime; nothing was saved."
                            + " The list of changes brings it back.",
                    thing.type().inWords(), thing.label()));
        }
    }

    private Revision head(ThingBody before) {
        return session.ledger()
                .head(before.uid())
                .filter(head -> !head.deleted() && says(head, before))
                .orElseThrow(() -> new ChangedMeanwhileException(Sentence.of(
                        "The {0} \"{1}\" was changed from elsewhere in the meantime; nothing was saved. Look what"
                                + " it is now, then repeat the change.",
                        before.type().inWords(), before.label())));
    }

    private void append(List<Revision> revisions) {
        session.ledger().append(new Batch(revisions, List.of(), session.keeper(), session.now()));
    }

    /** Whether the stored state is that one, as far as this version knows its fields. */
    private static boolean says(Revision stored, ThingBody before) {
        ThingBody now = new ThingBody(before.type(), before.uid(), before.label(), stored.body());
        return Entered.of(now).body().equals(before.body());
    }
}
