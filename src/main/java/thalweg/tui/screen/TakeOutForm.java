package thalweg.tui.screen;

import java.util.List;
import java.util.Optional;
import thalweg.amend.ChangeWords;
import thalweg.draft.DraftKey;
import thalweg.draft.DraftKind;
import thalweg.tui.core.Effect;
import thalweg.tui.core.Surroundings;
import thalweg.tui.widget.Form;
import thalweg.tui.widget.Paragraph;

/**
 * A thing to take out of use; a reason is asked for, and what goes with it is said.
 *
 * @param go which, and what is in it
 */
record TakeOutForm(Go.TakeOut go) implements FormTask {

    @Override
    public String title(Surroundings around) {
        return around.say("form.take_out.title", name(around));
    }

    private String name(Surroundings around) {
        return new ChangeWords(around.phrases(), around.units()).name(go.thing());
    }

    @Override
    public List<Paragraph> intro(Surroundings around) {
        String along = go.contents().isEmpty()
                ? around.say("form.take_out.alone")
                : around.say("form.take_out.along", go.contents().print(around.phrases()));
        return List.of(Paragraph.of(along));
    }

    @Override
    public Optional<DraftKey> draft() {
        return Optional.of(DraftKey.of(DraftKind.TAKE_OUT, go.thing().uid()));
    }

    @Override
    public Form form(Surroundings around) {
        return Form.of(new Build(around)
                .reason("form.reason", "help.form.take_out.reason")
                .done());
    }

    @Override
    public Effect ask(Filled filled, Surroundings around) {
        return new Amend.TakeOut(go.thing(), filled.text(Build.REASON));
    }
}
