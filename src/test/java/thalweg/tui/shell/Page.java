package thalweg.tui.shell;

import java.util.ArrayList;
import java.util.List;
import thalweg.tui.core.Binding;
import thalweg.tui.core.Canvas;
import thalweg.tui.core.Destination;
import thalweg.tui.core.Effect;
import thalweg.tui.core.Key;
import thalweg.tui.core.Message;
import thalweg.tui.core.Screen;
import thalweg.tui.core.Step;
import thalweg.tui.core.Style;
import thalweg.tui.core.Surroundings;

/**
 * A screen for tests: it remembers what it was told, counts when + is pressed, and holds what is typed while it writes.
 * One whose name ends with an s waits until it has been loaded.
 *
 * @param name in its title
 * @param told what it was told, in order
 * @param count how often + was pressed
 * @param typed what was typed and not saved
 * @param writing whether letters are text
 */
record Page(String name, List<Message> told, int count, String typed, boolean writing) implements Screen {

    /** Goes to a page that reads letters as commands, or to one that writes them down. */
    record Go(String name, boolean writing) implements Destination {}

    /** Work whose result is told as it is. */
    record Work(String what) implements Effect {}

    /** Brings the content of a page that waits for it. */
    record Loaded() implements Message {}

    /** Says that something was saved. */
    record Saved() implements Message {}

    Page {
        told = List.copyOf(told);
    }

    static Screen of(Destination destination) {
        Go go = (Go) destination;
        return new Page(go.name(), List.of(), 0, "", go.writing());
    }

    @Override
    public String title(Surroundings around) {
        return "Page " + name;
    }

    @Override
    public boolean waiting() {
        return name.endsWith("s") && !told.contains(new Loaded());
    }

    @Override
    public boolean unsaved() {
        return !typed.isEmpty();
    }

    @Override
    public List<Binding> bindings(Surroundings around) {
        return List.of(
                Binding.of(Key.of('+'), "count", () -> Step.stay(new Page(name, told, count + 1, typed, writing)))
                        .unless(waiting(), "It is not there yet."),
                Binding.of(Key.of('o'), "open", () -> Step.open(this, new Go(name + "o", false))),
                Binding.of(Key.of('w'), "write", () -> Step.open(this, new Go(name + "w", true))),
                Binding.of(Key.of('r'), "replace", () -> Step.replace(this, new Go(name + "r", false))),
                Binding.of(Key.ctrl('s'), "save", () -> Step.stay(this).doing(new Work("save"))),
                Binding.of(Key.of('!'), "break", () -> Step.stay(this).saying("It is done.")),
                Binding.of(Key.of('x'), "withdraw", () -> Step.stay(this))
                        .unless(true, "There is nothing to withdraw."),
                Binding.of(Key.Named.ESCAPE, "back", () -> Step.back(this)),
                Binding.of(Key.of('s'), "open slowly", () -> Step.open(this, new Go(name + "s", false)))
                        .unless(waiting(), "It is not there yet.")
                        .quiet());
    }

    @Override
    public Step update(Message message, Surroundings around) {
        if (message instanceof Saved) {
            return Step.back(new Page(name, told, count, "", writing)).saying("Saved.");
        }
        if (message instanceof Message.Failed failed) {
            return Step.stay(with(message)).refusing(failed.sentence());
        }
        if (writing
                && message instanceof Message.KeyPressed pressed
                && pressed.key().writes()) {
            return Step.stay(new Page(name, told, count, typed + pressed.key().text(), true));
        }
        Step step = Step.stay(with(message));
        return message instanceof Message.Opened ? step.doing(new Work("load " + name)) : step;
    }

    private Page with(Message message) {
        List<Message> more = new ArrayList<>(told);
        more.add(message);
        return new Page(name, more, count, typed, writing);
    }

    @Override
    public void draw(Canvas canvas, Surroundings around) {
        canvas.put(0, 1, "count " + count + ", typed " + typed, Style.NORMAL);
        canvas.put(1, 1, "told " + told.size(), Style.NORMAL);
    }
}
