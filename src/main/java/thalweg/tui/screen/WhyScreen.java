package thalweg.tui.screen;

import java.util.ArrayList;
import java.util.List;
import thalweg.text.Width;
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
import thalweg.tui.widget.Paragraph;
import thalweg.why.ExplainRig;
import thalweg.why.Figure;
import thalweg.why.Question;

/**
 * Every figure of a rig in a list, and why the chosen one is what it is, beside the list or below it.
 *
 * @param question whose figures they are
 * @param list which of them is chosen
 * @param top first line of the explanation that is shown
 */
record WhyScreen(Question question, ListState list, int top) implements Screen {

    /** Rows of the bars above and below a screen. */
    private static final int BARS = 2;

    private static final int LEAST_ROWS_OF_LIST = 3;

    /** The first figure, explained. */
    static WhyScreen of(Go.Why go) {
        return new WhyScreen(go.question(), ListState.START, 0);
    }

    @Override
    public String title(Surroundings around) {
        String name = question.study().answer().input().name();
        return name.isBlank() ? around.say("why.title") : around.labelled(around.say("why.title"), name);
    }

    private List<Figure> figures(Surroundings around) {
        return ExplainRig.of(question, around.phrases(), around.units());
    }

    @Override
    public List<Binding> bindings(Surroundings around) {
        int size = figures(around).size();
        int page = Math.max(1, explanation(around).rows() - 1);
        return List.of(
                Binding.of(Key.Named.DOWN, around.say("key.down"), () -> chosen(list.moved(1, size)))
                        .or(Key.of('j'))
                        .quiet(),
                Binding.of(Key.Named.UP, around.say("key.up"), () -> chosen(list.moved(-1, size)))
                        .or(Key.of('k'))
                        .quiet(),
                Binding.of(Key.Named.PAGE_DOWN, around.say("key.more_of_it"), () -> scrolled(page, around))
                        .or(Key.of(' ')),
                Binding.of(Key.Named.ESCAPE, around.say("key.back"), () -> Step.back(this)),
                Binding.of(Key.Named.PAGE_UP, around.say("key.page_up"), () -> scrolled(-page, around))
                        .quiet(),
                Binding.of(Key.Named.HOME, around.say("key.first"), () -> chosen(list.at(0, size)))
                        .quiet(),
                Binding.of(Key.Named.END, around.say("key.last"), () -> chosen(list.at(size - 1, size)))
                        .quiet());
    }

    /** Another figure is read from its beginning. */
    private Step chosen(ListState next) {
        return Step.stay(new WhyScreen(question, next, 0));
    }

    private Step scrolled(int by, Surroundings around) {
        Canvas room = explanation(around);
        int to = Paragraph.scrolled(text(around), top, by, room.rows(), room.columns());
        return Step.stay(new WhyScreen(question, list, to));
    }

    @Override
    public Step update(Message message, Surroundings around) {
        if (message instanceof Message.Wheel wheel) {
            return scrolled(wheel.rows(), around);
        }
        if (message instanceof Message.MousePressed mouse) {
            int size = figures(around).size();
            int height = listRoom(body(around), around).rows();
            int row = list.shownIn(height, size).top() + mouse.row();
            boolean inside = mouse.row() >= 0 && mouse.row() < height && row < size;
            return inside ? chosen(list.at(row, size)) : Step.stay(this);
        }
        return Step.stay(this);
    }

    private static Canvas body(Surroundings around) {
        return Canvas.of(Math.max(1, around.rows() - BARS), around.columns());
    }

    private static Canvas listRoom(Canvas canvas, Surroundings around) {
        return around.wide()
                ? canvas.part(0, 0, canvas.rows(), canvas.columns() / 2 - 1)
                : canvas.part(0, 0, listRows(canvas), canvas.columns());
    }

    private static int listRows(Canvas canvas) {
        return Math.min(canvas.rows(), Math.max(LEAST_ROWS_OF_LIST, canvas.rows() * 2 / 5));
    }

    private static Canvas explanation(Surroundings around) {
        return explanation(body(around), around);
    }

    private static Canvas explanation(Canvas canvas, Surroundings around) {
        if (around.wide()) {
            int width = canvas.columns() / 2;
            return canvas.part(0, width + 1, canvas.rows(), canvas.columns() - width - 2);
        }
        int from = Math.min(canvas.rows(), listRows(canvas) + (canvas.rows() > 12 ? 1 : 0));
        return canvas.part(from, 1, canvas.rows() - from, canvas.columns() - 2);
    }

    private List<Paragraph> text(Surroundings around) {
        List<Figure> figures = figures(around);
        Figure figure = figures.get(Math.min(list.chosen(), figures.size() - 1));
        List<Paragraph> text = new ArrayList<>();
        text.add(Paragraph.of(around.labelled(figure.label(), figure.value()), Style.STRONG));
        figure.lines(around.phrases()).forEach(line -> text.add(Paragraph.of(line.text(), style(line.part()))));
        return text;
    }

    private static Style style(Figure.Part part) {
        return switch (part) {
            case HOW, SOURCE -> Style.NORMAL;
            case RESTS_ON -> Style.FAINT;
            case NOT_STATED -> Style.CAUTION;
            case IS_NOT -> Style.MIND;
        };
    }

    @Override
    public void draw(Canvas canvas, Surroundings around) {
        List<Figure> figures = figures(around);
        Lists.draw(listRoom(canvas, around), list, figures.size(), true, around, (line, index, style) -> {
            Figure figure = figures.get(index);
            int value = Math.min(Width.of(figure.value()), line.columns() / 2);
            int label = Math.max(0, line.columns() - value - 2);
            line.put(0, 0, Width.cut(figure.label(), label), style);
            line.put(0, line.columns() - value, Width.cut(figure.value(), value), style);
        });
        Paragraph.draw(explanation(canvas, around), text(around), top, around);
    }
}
