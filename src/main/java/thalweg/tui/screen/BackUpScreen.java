package thalweg.tui.screen;

import java.util.List;
import thalweg.tui.core.Binding;
import thalweg.tui.core.Canvas;
import thalweg.tui.core.Effect;
import thalweg.tui.core.Key;
import thalweg.tui.core.Message;
import thalweg.tui.core.Screen;
import thalweg.tui.core.Step;
import thalweg.tui.core.Surroundings;
import thalweg.tui.widget.Paragraph;

/**
 * A copy of the whole database while it is being written.
 *
 * @param line how far it is
 */
record BackUpScreen(String line) implements Screen {

    static BackUpScreen opened() {
        return new BackUpScreen("");
    }

    @Override
    public String title(Surroundings around) {
        return around.say("backup.title");
    }

    @Override
    public List<Binding> bindings(Surroundings around) {
        return List.of(
                Binding.of(
                        Key.Named.ESCAPE,
                        around.say("key.stop"),
                        () -> Step.stay(this).doing(new Effect.Stop())),
                Binding.of(Key.Named.ENTER, around.say("key.meanwhile"), () -> Step.back(this)));
    }

    @Override
    public Step update(Message message, Surroundings around) {
        if (message instanceof Message.Opened) {
            return Step.stay(this).doing(new Ask.BackUp());
        }
        if (message instanceof Told.BackedUp done) {
            return Step.back(this).saying(around.say("backup.done", done.target()));
        }
        if (message instanceof Message.Progressed progressed) {
            return Step.stay(new BackUpScreen(LongWork.line(progressed, around)));
        }
        return message instanceof Message.Failed failed ? Step.back(this).refusing(failed.sentence()) : Step.stay(this);
    }

    @Override
    public void draw(Canvas canvas, Surroundings around) {
        List<Paragraph> text = List.of(Paragraph.of(around.say("backup.working")), Paragraph.gap(), Paragraph.of(line));
        Paragraph.draw(canvas.part(1, 2, canvas.rows() - 1, canvas.columns() - 4), text, 0, around);
    }
}
