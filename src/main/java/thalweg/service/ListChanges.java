package thalweg.service;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import thalweg.amend.ChangeView;
import thalweg.amend.Deed;
import thalweg.amend.Known;
import thalweg.fault.InputException;
import thalweg.fault.Sentence;
import thalweg.json.Json;
import thalweg.ledger.Fact;
import thalweg.ledger.Hash;
import thalweg.ledger.Revision;
import thalweg.ledger.Uid;
import thalweg.storage.Change;

/** Tells what was changed, by whom and when, and whether it stands. */
public final class ListChanges {

    private final Session session;

    public ListChanges(Session session) {
        this.session = session;
    }

    /**
     * The latest changes, newest first; of large ones only the first few deeds.
     *
     * @param most how many at the most
     */
    public List<ChangeView> latest(int most) {
        return views(session.changes().latest(most));
    }

    /** The same of those that touched that canyon and no other. */
    public List<ChangeView> latest(Uid canyon, int most) {
        return views(session.changes().latest(canyon, most));
    }

    /**
     * A change with everything that it did.
     *
     * @param key its number
     * @throws InputException when there is none
     */
    public ChangeView whole(long key) {
        return session.changes()
                .whole(key)
                .filter(change -> change.kind() == Change.Kind.DONE)
                .map(this::view)
                .orElseThrow(() -> new InputException(
                        Sentence.of("There is no change with the number {0}; `changes` lists them.", key)));
    }

    private List<ChangeView> views(List<Change> changes) {
        InLedger known = new InLedger(session, new HashMap<>());
        return changes.stream().map(change -> view(change, known)).toList();
    }

    /** A change as people read it. */
    ChangeView view(Change change) {
        return view(change, new InLedger(session, new HashMap<>()));
    }

    private ChangeView view(Change change, InLedger known) {
        List<Deed> deeds = new ArrayList<>();
        change.revisions().forEach(revision -> deeds.add(Deed.of(revision, known)));
        change.facts().forEach(fact -> deeds.add(Deed.of(fact, known)));
        return new ChangeView(
                change.key(),
                change.author(),
                change.at(),
                change.canyon(),
                change.canyon().flatMap(known::head).map(ListChanges::name).orElse(""),
                change.size(),
                counts(change),
                deeds,
                taken(change));
    }

    private static String name(Revision canyon) {
        return canyon.body().field("name").orElse(Json.of("")) instanceof Json.Text name ? name.value() : "";
    }

    private Map<String, Integer> counts(Change change) {
        if (change.revisions().size() + change.facts().size() < change.size()) {
            return session.changes().counts(change.key());
        }
        Map<String, Integer> counts = new TreeMap<>();
        change.revisions().forEach(revision -> counts.merge(revision.type(), 1, Integer::sum));
        change.facts().forEach(fact -> counts.merge(fact.type(), 1, Integer::sum));
        return counts;
    }

    private Optional<ChangeView.Signed> taken(Change change) {
        return session.changes()
                .lastAboutInShort(change.key())
                .filter(last -> last.kind() == Change.Kind.UNDONE)
                .map(last -> new ChangeView.Signed(last.author(), last.at()));
    }

    /** The things of one list are asked for again and again. */
    private record InLedger(Session session, Map<Uid, Optional<Revision>> heads) implements Known {
        @Override
        public Optional<Revision> head(Uid thing) {
            return heads.computeIfAbsent(thing, uid -> session.ledger().head(uid));
        }

        @Override
        public Optional<Revision> revision(Hash name) {
            return session.ledger().revision(name);
        }

        @Override
        public Optional<Fact> fact(Uid name) {
            return session.ledger().fact(name);
        }
    }
}
