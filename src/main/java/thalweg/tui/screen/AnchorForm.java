package thalweg.tui.screen;

import java.util.Optional;
import thalweg.body.ThingBody;
import thalweg.draft.DraftKey;
import thalweg.draft.DraftKind;
import thalweg.route.Anchor;
import thalweg.route.AnchorRole;
import thalweg.tui.core.Surroundings;
import thalweg.tui.widget.Form;

/**
 * An anchor to enter or edit.
 *
 * @param go which, and where a new one stands
 */
record AnchorForm(Go.EditAnchor go) implements FormTask {

    @Override
    public String title(Surroundings around) {
        return around.say(go.anchor().isPresent() ? "form.anchor.edit" : "form.anchor.new");
    }

    @Override
    public Optional<DraftKey> draft() {
        return Optional.of(DraftKey.of(DraftKind.ANCHOR, go.anchor().map(Anchor::uid), go.station()));
    }

    @Override
    public Form form(Surroundings around) {
        Optional<Anchor> before = go.anchor();
        return Form.of(new Build(around)
                .word(
                        "role",
                        "form.anchor.role",
                        "role",
                        AnchorRole.class,
                        before.map(Anchor::role).orElse(AnchorRole.MAIN))
                .text("name", "form.anchor.name", before.map(Anchor::name).orElse(""))
                .lines("note", "form.anchor.note", before.map(Anchor::note).orElse(""))
                .done());
    }

    @Override
    public Ask ask(Filled filled, Surroundings around) {
        Anchor after = new Anchor(
                go.uid(),
                go.station(),
                go.order(),
                filled.word("role", AnchorRole.class).orElseThrow(),
                filled.text("name"),
                filled.text("note"));
        return Save.of(go.anchor().map(ThingBody::of), ThingBody.of(after));
    }
}
