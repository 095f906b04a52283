package thalweg.tui.screen;

import java.util.ArrayList;
import java.util.List;
import thalweg.amend.ChangeWords;
import thalweg.amend.Rearrange;
import thalweg.tui.core.Binding;
import thalweg.tui.core.Canvas;
import thalweg.tui.core.Key;
import thalweg.tui.core.Message;
import thalweg.tui.core.Screen;
import thalweg.tui.core.Step;
import thalweg.tui.core.Style;
import thalweg.tui.core.Surroundings;
import thalweg.tui.widget.ListState;
import thalweg.tui.widget.Lists;

/**
 * What a thing could be put into, to choose from.
 *
 * @param go the thing and its targets
 * @param list which row is chosen
 * @param saving whether it is being put there
 */
record MoveScreen(Go.MoveTo go, ListState list, boolean saving) implements Screen {

    private static final int HEAD_ROWS = 2;

    static MoveScreen opened(Go.MoveTo go) {
        return new MoveScreen(go, ListState.START, false);
    }

    @Override
    public String title(Surroundings around) {
        String name = new ChangeWords(around.phrases(), around.units()).name(go.thing());
        return around.say("move.title", name);
    }

    @Override
    public List<Binding> bindings(Surroundings around) {
        List<Binding> bindings = new ArrayList<>();
        bindings.add(Binding.of(Key.Named.ENTER, around.say("key.move_here"), this::put)
                .unless(saving, around.say("form.sending"))
                .unless(go.targets().isEmpty(), around.say("list.empty")));
        bindings.add(Binding.of(Key.Named.ESCAPE, around.say("key.back"), () -> Step.back(this)));
        bindings.addAll(Lists.bindings(
                list, go.targets().size(), around.rows() - HEAD_ROWS - 2, around, to -> Step.stay(at(to))));
        return bindings;
    }

    private MoveScreen at(ListState to) {
        return new MoveScreen(go, to, saving);
    }

    private Step put() {
        Go.Target target = go.targets().get(Math.min(list.chosen(), go.targets().size() - 1));
        return Step.stay(new MoveScreen(go, list, true))
                .doing(new Amend.Rearranged(Rearrange.to(
                        go.thing(),
                        target.uid(),
                        target.within(),
                        target.within().size())));
    }

    @Override
    public Step update(Message message, Surroundings around) {
        if (message instanceof Told.Saved) {
            return Step.back(this).saying(around.say("move.done"));
        }
        if (message instanceof Message.Failed failed) {
            return Step.stay(new MoveScreen(go, list, false)).refusing(failed.sentence());
        }
        if (message instanceof Message.Wheel wheel) {
            return Step.stay(at(list.moved(wheel.rows(), go.targets().size())));
        }
        if (message instanceof Message.MousePressed mouse) {
            return pressed(mouse, around);
        }
        return Step.stay(this);
    }

    private Step pressed(Message.MousePressed mouse, Surroundings around) {
        int size = go.targets().size();
        int height = around.rows() - 2 - HEAD_ROWS;
        int row = list.shownIn(height, size).top() + mouse.row() - HEAD_ROWS;
        boolean onRow = mouse.row() >= HEAD_ROWS && row < size;
        return !onRow || saving ? Step.stay(this) : row == list.chosen() ? put() : Step.stay(at(list.at(row, size)));
    }

    @Override
    public void draw(Canvas canvas, Surroundings around) {
        canvas.fit(0, 2, canvas.columns() - 2, around.say("move.what_stays"), Style.FAINT);
        Canvas body = canvas.part(HEAD_ROWS, 0, canvas.rows() - HEAD_ROWS, canvas.columns());
        Lists.draw(
                body,
                list,
                go.targets().size(),
                true,
                around,
                (line, index, style) ->
                        line.fit(0, 0, line.columns(), go.targets().get(index).label(), style));
    }
}
