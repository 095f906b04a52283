package thalweg.tui.screen;

import java.util.List;
import thalweg.tui.core.Binding;
import thalweg.tui.core.Canvas;
import thalweg.tui.core.Key;
import thalweg.tui.core.Message;
import thalweg.tui.core.Screen;
import thalweg.tui.core.Step;
import thalweg.tui.core.Surroundings;
import thalweg.tui.widget.Paragraph;

/**
 * A text to read.
 *
 * @param heading above it
 * @param text of it
 * @param top first line shown
 */
record ReadScreen(String heading, List<Paragraph> text, int top) implements Screen {

    ReadScreen {
        text = List.copyOf(text);
    }

    /** The text from its beginning. */
    static ReadScreen of(Go.Read read) {
        return new ReadScreen(read.title(), read.text(), 0);
    }

    @Override
    public String title(Surroundings around) {
        return heading;
    }

    @Override
    public List<Binding> bindings(Surroundings around) {
        int page = Math.max(1, around.rows() - 3);
        return List.of(
                Binding.of(Key.Named.ESCAPE, around.say("key.back"), () -> Step.back(this)),
                Binding.of(Key.Named.DOWN, around.say("key.down"), () -> scrolled(1, around))
                        .or(Key.of('j'))
                        .quiet(),
                Binding.of(Key.Named.UP, around.say("key.up"), () -> scrolled(-1, around))
                        .or(Key.of('k'))
                        .quiet(),
                Binding.of(Key.Named.PAGE_DOWN, around.say("key.page_down"), () -> scrolled(page, around))
                        .or(Key.of(' ')),
                Binding.of(Key.Named.PAGE_UP, around.say("key.page_up"), () -> scrolled(-page, around)),
                Binding.of(Key.Named.HOME, around.say("key.first"), () -> scrolled(-top, around))
                        .quiet(),
                Binding.of(Key.Named.END, around.say("key.last"), () -> scrolled(1_000_000, around))
                        .quiet());
    }

    private Step scrolled(int by, Surroundings around) {
        int to = Paragraph.scrolled(text, top, by, around.rows() - 2, around.columns() - 2);
        return Step.stay(new ReadScreen(heading, text, to));
    }

    @Override
    public Step update(Message message, Surroundings around) {
        return message instanceof Message.Wheel wheel ? scrolled(wheel.rows(), around) : Step.stay(this);
    }

    @Override
    public void draw(Canvas canvas, Surroundings around) {
        Paragraph.draw(canvas.part(0, 1, canvas.rows(), canvas.columns() - 2), text, top, around);
    }
}
