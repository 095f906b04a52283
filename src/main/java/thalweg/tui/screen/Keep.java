package thalweg.tui.screen;

import thalweg.draft.Draft;
import thalweg.draft.DraftKey;
import thalweg.tui.core.Effect;

/** What is asked of the drafts, in the order in which it is asked and after all that was typed before. */
public sealed interface Keep extends Effect {

    /** A draft of that form; answered by {@link Told.DraftFound}. */
    record Find(DraftKey key) implements Keep {}

    /** A draft to keep whose form closes; not answered. */
    record Hold(Draft draft) implements Keep {}

    /** A draft that is saved or thrown away; not answered. */
    record Drop(DraftKey key) implements Keep {}

    /** All drafts; answered by {@link Told.DraftsListed}. */
    record ListAll() implements Keep {}

    /** A draft that is thrown away from the list; answered by {@link Told.DraftsListed}. */
    record DropListed(DraftKey key) implements Keep {}
}
