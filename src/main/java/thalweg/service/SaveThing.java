package thalweg.service;

import java.util.List;
import java.util.Optional;
import thalweg.body.Entered;
import thalweg.body.ThingBody;
import thalweg.fault.ChangedMeanwhileException;
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
     * @throws thalweg.fault.StoreException when the database cannot be written
     */
    public void anew(ThingBody entered) {
        append(first(entered));
    }

    /** The revision with which that thing begins. */
    Revision first(ThingBody entered) {
        ThingBody thing = Entered.of(entered);
        return Revision.first(thing.uid(), thing.type().word(), thing.body(), session.keeper(), session.now());
    }

    /**
     * Enters a new state of a thing; nothing is written where nothing differs.
     *
     * @param before the state from which the change was made
     * @param entered the same thing, changed
     * @throws ChangedMeanwhileException when the thing no longer is as it was before
     */
    public void changed(ThingBody before, ThingBody entered) {
        next(before, entered).ifPresent(this::append);
    }

    /** The revision that says what has changed; empty where nothing has. */
    Optional<Revision> next(ThingBody before, ThingBody entered) {
        ThingBody after = Entered.of(entered);
        if (before.body().equals(after.body())) {
            return Optional.empty();
        }
        Optional<Revision> head = session.ledger().head(before.uid());
        if (head.isEmpty() || !says(head.get(), before)) {
            throw new ChangedMeanwhileException("The " + before.type().word() + " \"" + before.label()
                    + "\" was changed from elsewhere in the meantime; nothing was saved."
                    + " Open it again and repeat the change.");
        }
        Json.Fields kept = withUnknown(head.get().body(), before.body(), after.body());
        return Optional.of(head.get().next(kept, false, session.keeper(), session.now()));
    }

    private void append(Revision revision) {
        session.ledger().append(new Batch(List.of(revision), List.of()));
    }

    /** Whether the stored state is that one, as far as this version knows its fields. */
    private static boolean says(Revision stored, ThingBody before) {
        ThingBody now = new ThingBody(before.type(), before.uid(), before.label(), stored.body());
        return Entered.of(now).body().equals(before.body());
    }

    /** Fields that a newer version wrote are kept as they are. */
    private static Json.Fields withUnknown(Json.Fields stored, Json.Fields before, Json.Fields after) {
        Json.Fields all = after;
        for (var field : stored.values().entrySet()) {
            if (!before.values().containsKey(field.getKey()) && !after.values().containsKey(field.getKey())) {
                all = all.with(field.getKey(), field.getValue());
            }
        }
        return all;
    }
}
