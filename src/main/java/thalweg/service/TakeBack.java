package thalweg.service;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import thalweg.body.ThingBody;
import thalweg.body.WithdrawalBody;
import thalweg.fault.InputException;
import thalweg.json.Json;
import thalweg.ledger.Fact;
import thalweg.ledger.Revision;
import thalweg.ledger.Uid;
import thalweg.storage.Batch;
import thalweg.storage.Change;

/**
 * Takes changes back and brings them again. Nothing is erased: a thing gets a new revision that says what the one before
 * the change said, an entry is withdrawn.
 */
public final class TakeBack {

    /** Larger changes, such as an import, are only taken back where a person chose them. */
    static final int LARGE = 100;

    private static final String REASON = "taken back";
    private static final String AGAIN = "brought again";

    private final Session session;

    public TakeBack(Session session) {
        this.session = session;
    }

    /**
     * Takes the latest change back that stands.
     *
     * @return what was taken back
     * @throws InputException when there is none, or it is so large that a person should choose it from the list
     */
    public Change undo() {
        Change last =
                session.changes().undoable().orElseThrow(() -> new InputException("There is no change to take back."));
        if (last.size() > LARGE) {
            throw new InputException("The last change has " + last.size()
                    + " entries; choose it from the list of changes to take it back.");
        }
        takeBack(last);
        return last;
    }

    /**
     * Takes a change back, whenever it was made.
     *
     * @param key of it
     * @return what was taken back
     * @throws InputException when it does not stand, or what it changed was changed again since
     */
    public Change takeBack(long key) {
        Change change = session.changes()
                .whole(key)
                .filter(known -> known.kind() == Change.Kind.DONE)
                .orElseThrow(() -> new InputException("There is no change number " + key + " to take back."));
        if (change.taken()) {
            throw new InputException("Change " + key + " was taken back before.");
        }
        takeBack(change);
        return change;
    }

    private void takeBack(Change change) {
        Change latest = session.changes().lastAbout(change.key()).orElse(change);
        append(inverse(latest, REASON), Change.Kind.UNDONE, change.key());
    }

    /**
     * Brings again what was taken back last, unless something else was changed since.
     *
     * @return the change that was brought again
     * @throws InputException when there is none
     */
    public Change redo() {
        Change undoing =
                session.changes().redoable().orElseThrow(() -> new InputException("There is nothing to bring again."));
        long key = undoing.undoes().orElseThrow();
        append(inverse(undoing, AGAIN), Change.Kind.REDONE, key);
        return session.changes().whole(key).orElseThrow();
    }

    private void append(Batch batch, Change.Kind kind, long undoes) {
        session.ledger().append(batch, kind, Optional.of(undoes));
    }

    private Batch inverse(Change change, String reason) {
        String author = session.keeper();
        String at = session.now();
        Set<Uid> things = new HashSet<>();
        change.revisions().forEach(revision -> things.add(revision.thing()));
        List<Revision> revisions = new ArrayList<>();
        for (Revision revision : change.revisions()) {
            revisions.add(inverse(revision, things, reason, author, at));
        }
        Collections.reverse(revisions);
        List<Fact> facts = new ArrayList<>();
        for (Fact fact : change.facts()) {
            refuseCorrected(fact, change);
            facts.add(WithdrawalBody.of(fact.uid(), reason, author, at));
        }
        return new Batch(revisions, facts, author, at);
    }

    /** What counts is the state, not the revision: a later change may have been made and taken back in between. */
    private Revision inverse(Revision revision, Set<Uid> alsoChanged, String reason, String author, String at) {
        Revision head = session.ledger().head(revision.thing()).orElseThrow();
        boolean asLeft = head.body().equals(revision.body()) && head.deleted() == revision.deleted();
        if (!asLeft) {
            throw new InputException("The " + revision.type().replace('_', ' ')
                    + " of this change was changed again since; take that later change back first.");
        }
        if (revision.parents().isEmpty()) {
            if (session.ledger().hasOthersWithin(revision.thing(), alsoChanged)) {
                throw new InputException("Something was entered into the "
                        + revision.type().replace('_', ' ')
                        + " of this change since; take that later change back first.");
            }
            return head.next(head.body().with(ThingBody.REMOVED_BECAUSE, Json.of(reason)), true, author, at);
        }
        Revision before = session.ledger().revision(revision.parents().get(0)).orElseThrow();
        return head.next(before.body(), before.deleted(), author, at);
    }

    private void refuseCorrected(Fact fact, Change change) {
        boolean own = change.kind() != Change.Kind.DONE || fact.type().equals(WithdrawalBody.TYPE);
        if (!own && !session.ledger().counts(fact)) {
            throw new InputException("An entry of this change was corrected or withdrawn since;"
                    + " take that later change back first.");
        }
    }
}
