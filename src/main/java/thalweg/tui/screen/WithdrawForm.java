package thalweg.tui.screen;

import java.util.List;
import java.util.Optional;
import thalweg.draft.DraftKey;
import thalweg.draft.DraftKind;
import thalweg.tui.core.Effect;
import thalweg.tui.core.Style;
import thalweg.tui.core.Surroundings;
import thalweg.tui.widget.Form;
import thalweg.tui.widget.Paragraph;

/**
 * An entry to withdraw; a reason is asked for.
 *
 * @param go which
 */
record WithdrawForm(Go.Withdraw go) implements FormTask {

    @Override
    public String title(Surroundings around) {
        return around.say("form.withdraw.title");
    }

    @Override
    public List<Paragraph> intro(Surroundings around) {
        return List.of(Paragraph.of(go.line(), Style.STRONG), Paragraph.of(around.say("form.withdraw.stays")));
    }

    @Override
    public Optional<DraftKey> draft() {
        return Optional.of(DraftKey.of(DraftKind.WITHDRAW, go.entry()));
    }

    @Override
    public String draftTitle(Surroundings around) {
        return go.line();
    }

    @Override
    public Form form(Surroundings around) {
        return Form.of(new Build(around)
                .reason("form.reason", "help.form.withdraw.reason")
                .done());
    }

    @Override
    public Effect ask(Filled filled, Surroundings around) {
        return new Amend.Withdraw(go.entry(), filled.text(Build.REASON));
    }
}
