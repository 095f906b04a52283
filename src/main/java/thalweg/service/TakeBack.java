package thalweg.service;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import thalweg.amend.ChangeView;
import thalweg.body.FactType;
import thalweg.body.ThingBody;
import thalweg.body.ThingType;
import thalweg.body.WithdrawalBody;
import thalweg.fault.InputException;
import thalweg.fault.Sentence;
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
    public ChangeView undo() {
        Change last = session.changes()
                .undoable()
                .orElseThrow(() -> new InputException(Sentence.of("There is no change to take back.")));
        if (last.size() > LARGE) {
            throw new InputException(Sentence.of(
                    "The last change has {0} entries; choose it from the list of changes to take it back.",
                    last.size()));
        }
        takeBack(last);
        return view(last);
    }

    /**
     * Takes a change back, whenever it was made.
     *
     * @param key of it
     * @return what was taken back
     * @throws InputException when it does not stand, or what it changed was changed again since
     */
    public ChangeView takeBack(long key) {
        Change change = own(key);
        if (change.taken()) {
            throw new InputException(Sentence.of("Change {0} was taken back before.", key));
        }
        takeBack(change);
        return view(change);
    }

    private void takeBack(Change change) {
        refuseAmended(change);
        Change latest = session.changes().lastAbout(change.key()).orElse(change);
        Set<Uid> touchedSince = session.changes().touchedSince(change.key());
        Batch batch = inverse(latest, touchedSince, REASON);
        for (Revision revision : batch.revisions()) {
            if (revision.deleted()
                    && session.things().within(revision.thing()).stream().anyMatch(touchedSince::contains)) {
                throw new InputException(Sentence.of(
                        "Something was entered into the {0} of this change since; take that later change back first.",
                        inWords(revision)));
            }
        }
        append(batch, Change.Kind.UNDONE, change.key());
    }

    /**
     * Brings again what was taken back last, unless something else was changed since.
     *
     * @return the change that was brought again
     * @throws InputException when there is none
     */
    public ChangeView redo() {
        Change undoing = session.changes()
                .redoable()
                .orElseThrow(() -> new InputException(Sentence.of("There is nothing to bring again.")));
        return bringAgain(undoing.undoes().orElseThrow());
    }

    /**
     * Brings a change again that was taken back, whenever that was.
     *
     * @param key of the change
     * @return the change that was brought again
     * @throws InputException when it stands, or what it changed was changed otherwise since
     */
    public ChangeView bringAgain(long key) {
        Change change = own(key);
        if (!change.taken()) {
            throw new InputException(Sentence.of("Change {0} stands; there is nothing to bring again.", key));
        }
        refuseOtherwiseAmended(change);
        Change undoing = session.changes().lastAbout(key).orElseThrow();
        append(inverse(undoing, session.changes().touchedSince(key), AGAIN), Change.Kind.REDONE, key);
        return view(change);
    }

    private ChangeView view(Change change) {
        return new ListChanges(session).view(change);
    }

    private Change own(long key) {
        return session.changes()
                .whole(key)
                .filter(known -> known.kind() == Change.Kind.DONE)
                .orElseThrow(() -> new InputException(
                        Sentence.of("There is no change with the number {0}; `changes` lists them.", key)));
    }

    private void append(Batch batch, Change.Kind kind, long undoes) {
        session.ledger().append(batch, kind, Optional.of(undoes));
    }

    /**
     * What leads back to before what was written last about a change.
     *
     * @param latest the change itself, or the last that took it back or brought it again
     * @param touchedSince by changes that came after it and stand
     */
    private Batch inverse(Change latest, Set<Uid> touchedSince, String reason) {
        String author = session.keeper();
        String at = session.now();
        List<Revision> revisions = new ArrayList<>();
        for (Revision revision : latest.revisions()) {
            revisions.add(inverse(revision, touchedSince, reason, author, at));
        }
        Collections.reverse(revisions);
        List<Fact> facts = new ArrayList<>();
        for (Fact fact : latest.facts()) {
            facts.add(WithdrawalBody.of(fact.uid(), reason, author, at));
        }
        Batch batch = new Batch(revisions, facts, author, at);
        refuseHidden(batch);
        return batch;
    }

    /** Changes that came later and were taken back have left the thing as this one did, in a revision of their own. */
    private Revision inverse(Revision revision, Set<Uid> touchedSince, String reason, String author, String at) {
        Revision head = session.ledger().head(revision.thing()).orElseThrow();
        boolean asItWasLeft = head.hash().equals(revision.hash())
                || (head.deleted() == revision.deleted() && head.body().equals(revision.body()));
        if (!asItWasLeft || touchedSince.contains(revision.thing())) {
            throw new InputException(Sentence.of(
                    "The {0} of this change was changed again since; take that later change back first.",
                    inWords(revision)));
        }
        if (!head.deleted() && !session.things().isInUse(revision.thing())) {
            throw new InputException(Sentence.of(
                    "The {0} of this change is in something that is out of use; bring that back first.",
                    inWords(revision)));
        }
        if (revision.parents().isEmpty()) {
            return head.next(head.body().with(ThingBody.REMOVED_BECAUSE, Json.of(reason)), true, author, at);
        }
        Revision before = session.ledger().revision(revision.parents().get(0)).orElseThrow();
        return head.next(before.body(), before.deleted(), author, at);
    }

    private static Sentence inWords(Revision revision) {
        return ThingType.of(revision.type()).map(ThingType::inWords).orElseGet(() -> Sentence.of("thing"));
    }

    /** What would count again would be seen by nobody where the thing that it is in is out of use. */
    private void refuseHidden(Batch batch) {
        Set<Uid> alive = new HashSet<>();
        batch.revisions().stream()
                .filter(revision -> !revision.deleted())
                .forEach(revision -> alive.add(revision.thing()));
        for (Revision revision : batch.revisions()) {
            Optional<Uid> within = ThingType.of(revision.type())
                    .filter(type -> !revision.deleted())
                    .flatMap(type -> ThingBody.parent(type, revision.body()));
            if (within.filter(uid -> !alive.contains(uid) && !session.things().isInUse(uid))
                    .isPresent()) {
                throw new InputException(Sentence.of(
                        "What the {0} of this change belongs to is out of use; bring that back first.",
                        inWords(revision)));
            }
        }
        for (Fact fact : batch.facts()) {
            if (about(fact)
                    .filter(uid -> !alive.contains(uid) && !session.things().isInUse(uid))
                    .isPresent()) {
                throw new InputException(
                        Sentence.of("What an entry of this change is about is out of use; bring that back first."));
            }
        }
    }

    /** The thing that is meant in the end where an entry, or its withdrawal, is withdrawn; empty where it is not known. */
    private Optional<Uid> about(Fact withdrawing) {
        Optional<Fact> fact = session.ledger().fact(withdrawing.about());
        while (fact.filter(TakeBack::isWithdrawal).isPresent()) {
            fact = session.ledger().fact(fact.orElseThrow().about());
        }
        return fact.filter(known -> FactType.of(known.type()).isPresent()).map(Fact::about);
    }

    private static boolean isWithdrawal(Fact fact) {
        return fact.type().equals(WithdrawalBody.TYPE);
    }

    /** An entry that came in together with what amends it never counted; only what amended it since stands in the way. */
    private void refuseAmended(Change change) {
        Set<Uid> together = new HashSet<>();
        change.facts().forEach(fact -> amended(fact).ifPresent(together::add));
        boolean since = change.facts().stream()
                .anyMatch(fact -> !isWithdrawal(fact) && !together.contains(fact.uid()) && !counted(fact));
        if (since) {
            throw new InputException(Sentence.of(
                    "An entry of this change was corrected or withdrawn since; take that later change back first."));
        }
    }

    /** What a fact withdraws or corrects, if it is one that does. */
    private static Optional<Uid> amended(Fact fact) {
        return isWithdrawal(fact) ? Optional.of(fact.about()) : fact.corrects();
    }

    /** A fact of a type that only a later version knows is no entry here and cannot have been amended. */
    private boolean counted(Fact fact) {
        return FactType.of(fact.type()).isEmpty() || session.ledger().counts(fact);
    }

    /** A correction or withdrawal comes again only where what it amends has not been amended otherwise meanwhile. */
    private void refuseOtherwiseAmended(Change change) {
        Set<Uid> own = new HashSet<>();
        change.facts().forEach(fact -> own.add(fact.uid()));
        for (Fact fact : change.facts()) {
            boolean otherwise = amended(fact)
                    .filter(uid -> !own.contains(uid))
                    .flatMap(uid -> session.ledger().fact(uid))
                    .filter(known -> !isWithdrawal(known) && !counted(known))
                    .isPresent();
            if (otherwise) {
                throw new InputException(Sentence.of(
                        "The entry that this change corrects or withdraws was corrected or withdrawn otherwise"
                                + " since; take that later change back first."));
            }
        }
    }
}
