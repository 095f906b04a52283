package thalweg.tui.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import thalweg.draft.Draft;
import thalweg.rig.RigDraft;
import thalweg.rig.Vector3;
import thalweg.tui.core.Binding;
import thalweg.tui.core.Canvas;
import thalweg.tui.core.Key;
import thalweg.tui.core.Message;
import thalweg.tui.core.Screen;
import thalweg.tui.core.Step;
import thalweg.tui.core.Style;
import thalweg.tui.core.Surroundings;
import thalweg.tui.widget.Form;
import thalweg.tui.widget.FormView;
import thalweg.tui.widget.Paragraph;

/**
 * The rig of an anchor: a drawing whose forces follow as the focus moves, and what the calculator says beside it.
 *
 * @param go the anchor whose points are rigged, and what to begin with
 * @param rig the rig as it is now, and what is left out of it; empty until the screen has opened
 * @param answer to the rig, or why there is none
 * @param starts what of load, aim, layout and material nobody has stated; those are only a start
 * @param options the form for load and material, where it is open
 * @param view what of it is shown
 * @param ranging whether the range of the peaks is being worked out, of this rig or of one before
 */
record RigScreen(
        Go.Rig go,
        Optional<InventoryRig> rig,
        RigFigures answer,
        Set<StartValue> starts,
        Optional<RigOptions> options,
        RigView view,
        boolean ranging)
        implements Screen {

    /** Not opened yet. */
    static RigScreen of(Go.Rig go) {
        return new RigScreen(
                go, Optional.empty(), RigFigures.NONE, StartValue.all(), Optional.empty(), RigView.FIRST, false);
    }

    /** Whether somebody stated all that the rig began with. */
    boolean stated() {
        return starts.isEmpty();
    }

    private Optional<RigDraft> draft() {
        return rig.flatMap(InventoryRig::draft);
    }

    @Override
    public String title(Surroundings around) {
        return around.say("rig.title", go.station().station().name(), About.anchorName(go.anchor(), around));
    }

    @Override
    public boolean writing() {
        return options.isPresent();
    }

    @Override
    public List<Binding> bindings(Surroundings around) {
        return options.isPresent() ? formBindings(around) : rigBindings(around);
    }

    private List<Binding> formBindings(Surroundings around) {
        return List.of(
                Binding.of(Key.ctrl('s'), around.say("key.apply"), () -> apply(around))
                        .or(Key.of(Key.Named.F2)),
                Binding.of(Key.Named.ESCAPE, around.say("key.leave_as_was"), () -> Step.stay(with(Optional.empty()))),
                Binding.of(
                        Key.Named.TAB,
                        around.say("key.next_field"),
                        () -> Step.stay(form(options.orElseThrow().last().moved(1)))));
    }

    private List<Binding> rigBindings(Surroundings around) {
        String nothing = around.say("rig.nothing");
        boolean none = draft().isEmpty();
        List<Binding> bindings = new ArrayList<>();
        bindings.addAll(FocusKeys.of(around, this::moved, none));
        Binding turning =
                Binding.of(Key.Named.TAB, around.say("key.text_or_drawing"), () -> Step.stay(with(view.turned())));
        if (RigPane.oneAtATime(around)) {
            bindings.add(turning);
        }
        bindings.add(Binding.of(Key.of('a'), around.say("key.attach"), this::attach)
                .unless(!stated(), around.say("rig.state_first", StartValue.words(starts, around)))
                .unless(answer.figures().isEmpty(), around.say("rig.no_answer"))
                .unless(around.readOnly(), around.say("read_only.refused")));
        bindings.add(Binding.of(Key.of('o'), around.say("key.load_and_material"), () -> openOptions(around))
                .unless(none, nothing));
        bindings.add(new StudyKeys(this).compare(around));
        bindings.add(new StudyKeys(this).why(around));
        if (!RigPane.oneAtATime(around)) {
            bindings.add(turning);
        }
        bindings.add(Binding.of(Key.of('x'), around.say("key.next_loss"), this::nextLoss)
                .unless(answer.figures().isEmpty(), around.say("rig.no_answer")));
        bindings.addAll(steps(around));
        bindings.addAll(new StudyKeys(this).bindings(around));
        bindings.add(Binding.of(Key.Named.ESCAPE, around.say("key.back"), () -> Step.back(this)));
        bindings.add(Binding.of(Key.Named.PAGE_DOWN, around.say("key.page_down"), () -> scrolled(5, around)));
        bindings.add(Binding.of(Key.Named.PAGE_UP, around.say("key.page_up"), () -> scrolled(-5, around))
                .quiet());
        return bindings;
    }

    private List<Binding> steps(Surroundings around) {
        boolean none = answer.figures().isEmpty();
        boolean still = answer.figures()
                .map(known -> known.input().load().sway().degrees() == 0)
                .orElse(true);
        return List.of(
                Binding.of(Key.of('.'), around.say("key.swing_right"), () -> Step.stay(with(view.swung(1))))
                        .unless(none, around.say("rig.no_answer"))
                        .unless(still, around.say("rig.no_sway")),
                Binding.of(Key.of(','), around.say("key.swing_left"), () -> Step.stay(with(view.swung(-1))))
                        .unless(none, around.say("rig.no_answer"))
                        .unless(still, around.say("rig.no_sway"))
                        .quiet(),
                Binding.of(Key.of('z'), around.say("key.rig_undo"), this::takenBack)
                        .unless(rig.flatMap(InventoryRig::before).isEmpty(), around.say("rig.no_step"))
                        .quiet());
    }

    private Step takenBack() {
        InventoryRig.Before before = rig.flatMap(InventoryRig::before).orElseThrow();
        Step back = new RigScreen(
                        go,
                        Optional.of(before.rig()),
                        RigFigures.of(before.rig().draft()),
                        before.starts(),
                        Optional.empty(),
                        view,
                        ranging)
                .ranged();
        return before.rig().before().isPresent() ? back : back.doing(new Keep.Drop(RigKeeping.key(go)));
    }

    @Override
    public Optional<Draft> draft(Surroundings around) {
        return RigKeeping.draft(this, around);
    }

    RigScreen with(Optional<RigOptions> form) {
        return new RigScreen(go, rig, answer, starts, form, view, ranging);
    }

    private RigScreen with(RigView other) {
        return new RigScreen(go, rig, answer, starts, options, other, ranging);
    }

    RigScreen with(RigFigures others) {
        return new RigScreen(go, rig, others, starts, options, view, ranging);
    }

    RigScreen ranging(boolean now) {
        return new RigScreen(go, rig, answer, starts, options, view, now);
    }

    /** Asks for the range of the peaks, unless one is being worked out; when that is there, this asks again. */
    Step ranged() {
        return ranging || answer.figures().isEmpty()
                ? Step.stay(this)
                : Step.stay(ranging(true))
                        .doing(new Ask.FindPeakRange(answer.figures().get()));
    }

    /** What was asked for is at the top of the text, and the text is in sight. */
    RigScreen studied(RigStudies studies) {
        return new RigScreen(go, rig, answer.with(studies), starts, options, view.atText(), ranging);
    }

    private Step nextLoss() {
        return Step.stay(
                with(view.nextLoss(answer.figures().orElseThrow().losses().size())));
    }

    private RigScreen form(Form changed) {
        return with(options.map(open -> open.with(changed)));
    }

    private RigScreen with(RigDraft changed, Set<StartValue> left) {
        InventoryRig next = rig.orElseThrow().changed(changed, starts);
        RigFigures figures = RigFigures.of(Optional.of(changed));
        return new RigScreen(go, Optional.of(next), figures, left, Optional.empty(), view, ranging);
    }

    private Step moved(double across, double up) {
        List<Double> at = draft().orElseThrow().rig().focus();
        return movedTo(new Vector3(at.get(0) + across, at.get(1) + up, at.get(2)));
    }

    /** To the centimetre, so that many small steps do not add up to an odd number. */
    Step movedTo(Vector3 place) {
        RigDraft before = draft().orElseThrow();
        Vector3 to = new Vector3(Math.round(place.x() * 100) / 100.0, Math.round(place.y() * 100) / 100.0, place.z());
        return with(before.withRig(before.rig().withFocus(to)), starts).ranged();
    }

    private Step openOptions(Surroundings around) {
        return Step.stay(with(Optional.of(RigOptions.of(draft().orElseThrow(), starts, around))));
    }

    private Step apply(Surroundings around) {
        RigOptions open = options.orElseThrow();
        Optional<String> fault = open.last().fault(around);
        if (fault.isPresent()) {
            return Step.stay(form(open.last().atFault())).refusing(fault.get());
        }
        return with(RigForm.filled(draft().orElseThrow(), open, around), open.starts())
                .ranged();
    }

    private Step attach() {
        return Step.stay(this)
                .doing(new Ask.AttachAnalysis(
                        go.station(), answer.figures().orElseThrow().input()));
    }

    private Step scrolled(int by, Surroundings around) {
        Canvas body = Canvas.of(around.rows() - 2, around.columns());
        Canvas room = pane().textRoom(body, around);
        int to = Paragraph.scrolled(text(around), view.top(), by, room.rows(), room.columns());
        return Step.stay(with(view.scrolledTo(to)));
    }

    @Override
    public Step update(Message message, Surroundings around) {
        if (message instanceof Message.Opened) {
            InventoryRig opened = go.kept()
                    .map(known -> RigAgain.of(go.station(), known, around))
                    .orElseGet(() -> InventoryRig.of(go.anchor(), around));
            Step step = new RigScreen(
                            go,
                            Optional.of(opened),
                            RigFigures.of(opened.draft()),
                            RigKeeping.begun(go),
                            Optional.empty(),
                            RigPane.oneAtATime(around) ? RigView.FIRST.atText() : RigView.FIRST,
                            ranging)
                    .ranged();
            return around.readOnly() ? step : step.doing(new Keep.Find(RigKeeping.key(go)));
        }
        if (message instanceof Told.DraftFound found) {
            return found.draft()
                    .map(draft -> RigKeeping.restored(this, draft, around).ranged())
                    .orElseGet(() -> Step.stay(this));
        }
        if (message instanceof Told.Saved) {
            return Step.stay(new RigScreen(go, rig.map(InventoryRig::asKept), answer, starts, options, view, ranging))
                    .doing(new Keep.Drop(RigKeeping.key(go)))
                    .saying(around.say("rig.attached"));
        }
        Optional<Step> studied = new StudyKeys(this).after(message);
        if (studied.isPresent()) {
            return studied.get();
        }
        if (message instanceof Message.Failed failed) {
            return Step.stay(this).refusing(failed.sentence());
        }
        if (message instanceof Message.KeyPressed pressed && options.isPresent()) {
            return Step.stay(with(Optional.of(options.get().after(pressed.key(), around))));
        }
        if (message instanceof Message.Pasted pasted && options.isPresent()) {
            return Step.stay(with(Optional.of(options.get().pasted(pasted.text(), around))));
        }
        if (message instanceof Message.Wheel wheel && options.isEmpty()) {
            return scrolled(wheel.rows(), around);
        }
        return Step.stay(this);
    }

    private List<Paragraph> text(Surroundings around) {
        List<Paragraph> text = new ArrayList<>();
        rig.ifPresent(known -> known.cautions(around).forEach(line -> text.add(Paragraph.of(line, Style.CAUTION))));
        if (!stated() && draft().isPresent()) {
            text.add(Paragraph.of(around.say("rig.start_values", StartValue.words(starts, around)), Style.CAUTION));
        }
        answer.refusals().forEach(refusal -> text.add(Paragraph.of(around.say("rig.refused", refusal), Style.ERROR)));
        view.loss(answer.figures()).ifPresent(loss -> {
            text.addAll(LossText.lines(loss, PeakText.of(answer.studies().peaks()), around));
            text.add(new Paragraph(2, around.caution("rig.peak_caution"), Style.CAUTION));
        });
        text.addAll(StudyText.of(answer.studies(), answer.figures(), around));
        answer.figures()
                .ifPresent(figures -> text.addAll(
                        RigText.of(figures, PeakText.of(answer.studies().peaks()), around)));
        if (draft().isEmpty()) {
            text.add(Paragraph.of(around.say("rig.nothing")));
            text.add(Paragraph.of(around.say("rig.how_to")));
        }
        return text;
    }

    private RigPane pane() {
        return new RigPane(answer.figures(), view, draft());
    }

    @Override
    public void draw(Canvas canvas, Surroundings around) {
        if (options.isPresent()) {
            FormView.draw(
                    canvas.part(0, 1, canvas.rows(), canvas.columns() - 2),
                    options.get().last(),
                    around);
            return;
        }
        pane().draw(canvas, text(around), around);
    }
}
