package thalweg.tui.shell;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import thalweg.testing.Around;
import thalweg.tui.core.Key;
import thalweg.tui.core.Message;

/** Drives a shell around {@link Page}s as a person does, and looks at what is on the screen. */
final class Driven {

    private Shell shell;
    private Reaction last;
    private final List<Work> work = new ArrayList<>();

    Driven() {
        this(24, 80);
    }

    Driven(int rows, int columns) {
        shell = Shell.of(Page::of, new Page.Go("a", false), Around.sized(rows, columns));
        last = shell.start();
        taken();
    }

    private void taken() {
        shell = last.shell();
        work.addAll(last.work());
    }

    Driven tell(Message message) {
        last = shell.update(message);
        taken();
        return this;
    }

    Driven press(Key key) {
        return tell(new Message.KeyPressed(key));
    }

    Driven press(Key.Named named) {
        return press(Key.of(named));
    }

    /** Presses each of these characters. */
    Driven type(String characters) {
        characters.codePoints().forEach(character -> press(Key.of(character)));
        return this;
    }

    /** Answers the latest work. */
    Driven answer(Message message) {
        return tell(new Result(work.get(work.size() - 1).frame(), message));
    }

    Reaction.Order order() {
        return last.order();
    }

    List<Work> work() {
        return List.copyOf(work);
    }

    Page top() {
        return (Page) shell.frames().get(shell.frames().size() - 1).screen();
    }

    Shell shell() {
        return shell;
    }

    String title() {
        return shell.draw().row(0).strip();
    }

    String foot() {
        return shell.draw().row(shell.around().rows() - 1);
    }

    String screen() {
        return shell.draw().text();
    }

    /** Rows that hold that text. */
    Stream<String> rowsWith(String text) {
        return IntStream.range(0, shell.around().rows())
                .mapToObj(shell.draw()::row)
                .filter(row -> row.contains(text));
    }
}
