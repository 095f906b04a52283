package thalweg.tui.screen;

import java.util.Optional;
import java.util.stream.Collectors;
import thalweg.draft.DraftKey;
import thalweg.draft.DraftKind;
import thalweg.logbook.PrivateNote;
import thalweg.tui.core.Surroundings;
import thalweg.tui.widget.Form;

/**
 * The one private note about a thing; emptied, it is taken away.
 *
 * @param go what it is about
 */
record PrivateNoteForm(Go.EditPrivateNote go) implements FormTask {

    @Override
    public String title(Surroundings around) {
        return around.say("form.private.title", go.label());
    }

    @Override
    public Optional<DraftKey> draft() {
        return Optional.of(DraftKey.of(DraftKind.PRIVATE_NOTE, go.about()));
    }

    @Override
    public Form form(Surroundings around) {
        String text = go.before().stream().map(PrivateNote::text).collect(Collectors.joining("\n\n"));
        return Form.of(
                new Build(around).lines("text", "form.private.text", text).done());
    }

    @Override
    public Ask ask(Filled filled, Surroundings around) {
        return new Ask.SavePrivateNote(go.about(), go.before(), filled.text("text"));
    }
}
