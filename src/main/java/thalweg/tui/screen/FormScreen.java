package thalweg.tui.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import thalweg.tui.core.Binding;
import thalweg.tui.core.Canvas;
import thalweg.tui.core.Key;
import thalweg.tui.core.Message;
import thalweg.tui.core.Screen;
import thalweg.tui.core.Step;
import thalweg.tui.core.Surroundings;
import thalweg.tui.widget.Form;
import thalweg.tui.widget.FormView;
import thalweg.tui.widget.Paragraph;

/**
 * A form to fill in. What was entered stays until it is saved or given up on purpose.
 *
 * @param task what it is for
 * @param first as it opened; empty until then
 * @param form as it is now
 * @param state how far it is
 */
record FormScreen(FormTask task, Optional<Form> first, Optional<Form> form, State state) implements Screen {

    /** How far a form is. */
    enum State {
        EDITING,
        SENDING,
        DONE
    }

    /** A form that has not opened yet. */
    static FormScreen of(FormTask task) {
        return new FormScreen(task, Optional.empty(), Optional.empty(), State.EDITING);
    }

    @Override
    public String title(Surroundings around) {
        return task.title(around);
    }

    @Override
    public boolean writing() {
        return true;
    }

    @Override
    public boolean unsaved() {
        return state != State.DONE && form.map(Form::touched).orElse(false);
    }

    @Override
    public List<Binding> bindings(Surroundings around) {
        List<Binding> bindings = new ArrayList<>();
        boolean busy = state == State.SENDING || form.isEmpty();
        bindings.add(Binding.of(Key.ctrl('s'), task.send(around), () -> send(around))
                .or(Key.of(Key.Named.F2))
                .unless(busy, around.say("form.sending")));
        bindings.add(Binding.of(Key.Named.ESCAPE, around.say("key.back"), () -> Step.back(this)));
        bindings.add(Binding.of(Key.Named.TAB, around.say("key.next_field"), () -> moved(1))
                .unless(form.isEmpty(), around.say("loading")));
        bindings.add(Binding.of(Key.shift(Key.Named.TAB), around.say("key.previous_field"), () -> moved(-1))
                .unless(form.isEmpty(), around.say("loading"))
                .quiet());
        return bindings;
    }

    private Step moved(int by) {
        return Step.stay(with(form.orElseThrow().moved(by)));
    }

    private FormScreen with(Form changed) {
        return new FormScreen(task, first, Optional.of(changed), state);
    }

    private FormScreen in(State next) {
        return new FormScreen(task, first, form, next);
    }

    private Step send(Surroundings around) {
        Form filled = form.orElseThrow();
        if (filled.fault().isPresent()) {
            return Step.stay(with(filled.atFault()));
        }
        Filled sent = new Filled(first.orElseThrow(), filled);
        String refusal = task.refusal(sent, around);
        if (!refusal.isEmpty()) {
            return Step.stay(this).refusing(refusal);
        }
        return Step.stay(in(State.SENDING)).doing(task.ask(sent, around));
    }

    @Override
    public Step update(Message message, Surroundings around) {
        if (message instanceof Message.Opened) {
            Form opened = task.form(around);
            return Step.stay(new FormScreen(task, Optional.of(opened), Optional.of(opened), State.EDITING));
        }
        Optional<FormTask.Onward> onward = onward(message, around);
        if (onward.isPresent()) {
            return onward.get().done()
                    ? Step.replace(in(State.DONE), onward.get().go())
                    : Step.open(in(State.EDITING), onward.get().go());
        }
        if (message instanceof Told.Saved saved) {
            return Step.back(in(State.DONE)).saying(said(saved.remarks(), around));
        }
        if (message instanceof Told.SheetWritten written) {
            String sentence = written.number()
                    .map(number -> around.say("sheet_form.given", written.target(), number))
                    .orElse(around.say("sheet_form.written", written.target()));
            return Step.back(in(State.DONE)).saying(sentence);
        }
        if (message instanceof Message.Failed failed) {
            return Step.stay(in(State.EDITING)).refusing(failed.sentence());
        }
        if (form.isEmpty() || state == State.SENDING) {
            return Step.stay(this);
        }
        if (message instanceof Message.KeyPressed pressed) {
            return Step.stay(with(task.adapted(form.get(), form.get().after(pressed.key()))));
        }
        if (message instanceof Message.Pasted pasted) {
            return Step.stay(with(form.get().pasted(pasted.text())));
        }
        if (message instanceof Message.Wheel wheel) {
            return moved(wheel.rows() > 0 ? 1 : -1);
        }
        return Step.stay(this);
    }

    /** The first of the remarks is enough to look there; the command that checks the records names them all. */
    private static String said(List<String> remarks, Surroundings around) {
        return switch (remarks.size()) {
            case 0 -> around.say("form.saved");
            case 1 -> around.say("form.saved_but", remarks.get(0));
            default -> around.say("form.saved_but_more", remarks.get(0), remarks.size() - 1);
        };
    }

    private Optional<FormTask.Onward> onward(Message message, Surroundings around) {
        return message instanceof Told answer && first.isPresent() && form.isPresent()
                ? task.onward(answer, new Filled(first.get(), form.get()), around)
                : Optional.empty();
    }

    @Override
    public void draw(Canvas canvas, Surroundings around) {
        Canvas room = canvas.part(0, 1, canvas.rows(), canvas.columns() - 2);
        List<Paragraph> intro = task.intro(around);
        int height = intro.isEmpty() ? 0 : Math.min(Paragraph.height(intro, room.columns()), room.rows() / 2);
        Paragraph.draw(room.part(0, 0, height, room.columns()), intro, 0, around);
        int top = height == 0 ? 0 : height + 1;
        Canvas below = room.part(top, 0, room.rows() - top, room.columns());
        form.ifPresent(shown -> FormView.draw(below, shown, around));
    }
}
