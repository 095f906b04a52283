package thalweg.tui.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import thalweg.draft.Draft;
import thalweg.draft.DraftKey;
import thalweg.draft.DraftKind;
import thalweg.draft.KeptDraft;
import thalweg.fault.Sentence;
import thalweg.tui.core.Binding;
import thalweg.tui.core.Canvas;
import thalweg.tui.core.Effect;
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
 * @param recovery what came of a draft that was kept of it
 */
record FormScreen(FormTask task, Optional<Form> first, Optional<Form> form, State state, Recovery recovery)
        implements Screen {

    /** Not beside the key that saves: a slip must not throw away what it was meant to keep. */
    private static final Key DROP_DRAFT = Key.ctrl('r');

    /** How far a form is. */
    enum State {
        EDITING,
        SENDING,
        DONE
    }

    /** A form that has not opened yet. */
    static FormScreen of(FormTask task) {
        return new FormScreen(task, Optional.empty(), Optional.empty(), State.EDITING, Recovery.NONE);
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
    public boolean waiting() {
        return recovery.looking();
    }

    @Override
    public Optional<Draft> draft(Surroundings around) {
        return task.draft()
                .filter(key -> unsaved() && !around.readOnly())
                .map(key ->
                        KeptForm.draft(key, task.draftTitle(around), first.orElseThrow(), form.orElseThrow(), around));
    }

    @Override
    public boolean unsaved() {
        return state != State.DONE && form.map(Form::touched).orElse(false);
    }

    @Override
    public List<Binding> bindings(Surroundings around) {
        List<Binding> bindings = new ArrayList<>();
        boolean busy = state == State.SENDING || form.isEmpty() || recovery.looking();
        bindings.add(Binding.of(Key.ctrl('s'), task.send(around), () -> send(around))
                .or(Key.of(Key.Named.F2))
                .unless(busy, around.say("form.sending")));
        bindings.add(
                state == State.SENDING && task.stoppable()
                        ? Binding.of(
                                Key.Named.ESCAPE,
                                around.say("key.stop"),
                                () -> Step.stay(this).doing(new Effect.Stop()))
                        : Binding.of(Key.Named.ESCAPE, around.say("key.back"), () -> Step.back(this)));
        if (task.looks()) {
            bindings.add(Binding.of(Key.Named.F4, around.say("key.look"), () -> look(around))
                    .or(Key.ctrl('p'))
                    .unless(busy, around.say("form.sending")));
        }
        if (recovery.offers()) {
            String label = around.say(recovery.dropped().isPresent() ? "key.draft_back" : "key.drop_draft");
            bindings.add(Binding.of(DROP_DRAFT, label, this::turned).unless(busy, around.say("form.sending")));
        }
        List<Paragraph> told = recovery.lines(DROP_DRAFT.print(), around);
        if (!told.isEmpty()) {
            bindings.add(Binding.of(
                    Key.Named.F3,
                    around.say("key.read_above"),
                    () -> Step.open(this, new Go.Read(title(around), told))));
        }
        bindings.add(Binding.of(Key.Named.TAB, around.say("key.next_field"), () -> moved(1))
                .unless(form.isEmpty() || recovery.looking(), around.say("loading")));
        bindings.add(Binding.of(Key.shift(Key.Named.TAB), around.say("key.previous_field"), () -> moved(-1))
                .unless(form.isEmpty() || recovery.looking(), around.say("loading"))
                .quiet());
        return bindings;
    }

    private Step moved(int by) {
        return Step.stay(with(form.orElseThrow().moved(by)));
    }

    private FormScreen with(Form changed) {
        return new FormScreen(task, first, Optional.of(changed), state, recovery);
    }

    private FormScreen in(State next) {
        return new FormScreen(task, first, form, next, recovery);
    }

    /** Throws the draft away, with all that was entered since, or brings all of that back. */
    private Step turned() {
        Optional<Form> back = recovery.dropped();
        Form next = back.orElse(first.orElseThrow());
        Recovery after = recovery.with(back.isPresent() ? Optional.empty() : form);
        FormScreen turned = new FormScreen(task, first, Optional.of(next), state, after);
        return back.isPresent() ? Step.stay(turned) : turned.dropping(Step.stay(turned));
    }

    /** The same step, which leaves no draft behind. */
    private Step dropping(Step step) {
        return task.draft().map(Keep.Drop::new).<Step>map(step::doing).orElse(step);
    }

    private Step opened(Surroundings around) {
        Form opened = task.form(around);
        Optional<DraftKey> key = task.draft().filter(known -> !around.readOnly());
        Recovery looking = key.isPresent() ? Recovery.LOOKING : Recovery.NONE;
        Step step = Step.stay(new FormScreen(task, Optional.of(opened), Optional.of(opened), State.EDITING, looking));
        return key.<Effect>map(Keep.Find::new).map(step::doing).orElse(step);
    }

    /** The same step, which looks how what is edited here stands in the records now. */
    private Step lookAround(Step step) {
        return task.draft()
                .filter(key -> form.isPresent() && (!key.isNew() || key.kind() == DraftKind.VISIT))
                .filter(key -> step.screen() instanceof FormScreen next && next.state() == State.EDITING)
                .<Effect>map(Ask.FindSurrounding::new)
                .map(step::doing)
                .orElse(step);
    }

    /** What was entered, on what is edited here as it stands now. */
    private Step standing(Told.Surrounded surrounded, Surroundings around) {
        Optional<FormTask> now =
                DraftPlace.of(surrounded, task.draftTitle(around)).map(Screens::form);
        if (now.isEmpty()) {
            return Step.stay(this).refusing(around.say("changed.gone"));
        }
        Form opened =
                now.get().form(around).focusedOn(form.orElseThrow().focused().key());
        if (!unsaved()) {
            return Step.stay(new FormScreen(now.get(), Optional.of(opened), Optional.of(opened), state, recovery));
        }
        Draft draft = KeptForm.draft(surrounded.key(), "", first.orElseThrow(), form.orElseThrow(), around);
        KeptForm.Refilled refilled = KeptForm.refilled(opened, opened, draft, around);
        return Step.stay(new FormScreen(
                now.get(), Optional.of(opened), Optional.of(refilled.form()), state, recovery.and(refilled)));
    }

    private Step found(Optional<KeptDraft> draft, Surroundings around) {
        Form opened = first.orElseThrow();
        if (draft.isEmpty()) {
            return Step.stay(new FormScreen(task, first, form, state, Recovery.NONE));
        }
        Form then = task.form(around.with(draft.get().draft().units()));
        KeptForm.Refilled refilled = KeptForm.refilled(opened, then, draft.get().draft(), around);
        return Step.stay(
                new FormScreen(task, first, Optional.of(refilled.form()), state, Recovery.of(draft.get(), refilled)));
    }

    private Step send(Surroundings around) {
        return checked(sent -> Step.stay(in(State.SENDING)).doing(task.ask(sent, around)), around);
    }

    /** Shows what would come of it; all that was entered waits below. */
    private Step look(Surroundings around) {
        return checked(
                sent -> task.look(sent, around)
                        .<Step>map(effect -> Step.stay(in(State.SENDING)).doing(effect))
                        .orElse(Step.stay(this)),
                around);
    }

    /** The step where no field has a fault and nothing speaks against it. */
    private Step checked(Function<Filled, Step> step, Surroundings around) {
        Form filled = form.orElseThrow();
        if (filled.fault(around).isPresent()) {
            return Step.stay(with(filled.atFault()));
        }
        Filled sent = new Filled(first.orElseThrow(), filled);
        String refusal = task.refusal(sent, around);
        return refusal.isEmpty() ? step.apply(sent) : Step.stay(this).refusing(refusal);
    }

    @Override
    public Step update(Message message, Surroundings around) {
        if (message instanceof Message.Opened) {
            return opened(around);
        }
        if (message instanceof Told.DraftFound found) {
            return recovery.looking() ? found(found.draft(), around) : Step.stay(this);
        }
        Optional<FormTask.Onward> onward = onward(message, around);
        if (onward.isPresent()) {
            return onward.get().done()
                    ? dropping(Step.replace(in(State.DONE), onward.get().go()))
                    : Step.open(in(State.EDITING), onward.get().go());
        }
        if (message instanceof Told.Saved saved) {
            return dropping(Step.back(in(State.DONE)).saying(said(saved.remarks(), around)));
        }
        if (message instanceof Told.KeeperSet set) {
            return Step.back(in(State.DONE)).saying(around.say("keeper.done", set.name()));
        }
        if (message instanceof Told.SheetWritten written) {
            String sentence = written.number()
                    .map(number -> around.say("sheet_form.given", written.target(), number))
                    .orElse(around.say("sheet_form.written", written.target()));
            return dropping(Step.back(in(State.DONE)).saying(sentence));
        }
        if (message instanceof Told.SheetsWritten written) {
            return dropping(Step.back(in(State.DONE)).saying(LongWork.said(written, around)));
        }
        if (message instanceof Message.ChangedElsewhere) {
            return lookAround(Step.stay(this));
        }
        if (message instanceof Told.Surrounded surrounded) {
            return state == State.EDITING ? standing(surrounded, around) : Step.stay(this);
        }
        if (message instanceof Message.Progressed progressed) {
            return Step.stay(this).sayingMeanwhile(LongWork.line(progressed, around));
        }
        if (message instanceof Message.Failed failed) {
            Recovery known = recovery.looking() ? Recovery.NONE : recovery;
            Step refused = Step.stay(new FormScreen(task, first, form, State.EDITING, known))
                    .refusing(failed.sentence());
            return state == State.SENDING ? lookAround(refused) : refused;
        }
        if (form.isEmpty() || state == State.SENDING || recovery.looking()) {
            return Step.stay(this);
        }
        if (message instanceof Message.KeyPressed pressed) {
            return Step.stay(with(task.adapted(form.get(), form.get().after(pressed.key()), around)));
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
    private static String said(List<Sentence> remarks, Surroundings around) {
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
        List<Paragraph> intro = new ArrayList<>(recovery.lines(DROP_DRAFT.print(), around));
        intro.addAll(task.intro(around));
        int height = intro.isEmpty() ? 0 : Math.min(Paragraph.height(intro, room.columns()), room.rows() / 2);
        Paragraph.draw(room.part(0, 0, height, room.columns()), intro, 0, around);
        int top = height == 0 ? 0 : height + 1;
        Canvas below = room.part(top, 0, room.rows() - top, room.columns());
        form.ifPresent(shown -> FormView.draw(below, shown, around));
    }
}
