package thalweg.tui.runtime;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import thalweg.draft.Draft;
import thalweg.draft.DraftKey;
import thalweg.service.DraftFolder;
import thalweg.tui.core.Message;
import thalweg.tui.screen.Keep;
import thalweg.tui.screen.Told;

/** Does what is asked of the drafts. Used by one thread. */
public final class RunKeep {

    private final Optional<DraftFolder> folder;
    private final Map<DraftKey, Draft> written = new HashMap<>();

    /**
     * @param folder in which they are; empty where none are kept, because nothing can be changed
     */
    public RunKeep(Optional<DraftFolder> folder) {
        this.folder = folder;
    }

    /**
     * Writes what is not written yet.
     *
     * @param drafts of all screens
     * @throws thalweg.fault.StoreException when one cannot be written
     */
    public void flush(List<Draft> drafts) {
        drafts.forEach(this::keep);
    }

    private void keep(Draft draft) {
        if (folder.isEmpty()) {
            return;
        }
        if (draft.isEmpty()) {
            if (written.containsKey(draft.key())) {
                drop(draft.key());
            }
        } else if (!draft.equals(written.get(draft.key()))) {
            folder.get().keep(draft);
            written.put(draft.key(), draft);
        }
    }

    private void drop(DraftKey key) {
        written.remove(key);
        folder.ifPresent(known -> known.drop(key));
    }

    /**
     * Does one thing.
     *
     * @return the answer, where there is one
     * @throws thalweg.fault.StoreException when it came to nothing
     */
    public Optional<Message> run(Keep keep) {
        if (keep instanceof Keep.Find find) {
            return Optional.of(new Told.DraftFound(folder.flatMap(known -> known.find(find.key()))));
        }
        if (keep instanceof Keep.Hold hold) {
            keep(hold.draft());
            return Optional.empty();
        }
        if (keep instanceof Keep.Drop drop) {
            drop(drop.key());
            return Optional.empty();
        }
        if (keep instanceof Keep.DropListed drop) {
            drop(drop.key());
            return Optional.of(listed());
        }
        return Optional.of(listed());
    }

    private Message listed() {
        return new Told.DraftsListed(folder.map(DraftFolder::all).orElse(List.of()));
    }
}
