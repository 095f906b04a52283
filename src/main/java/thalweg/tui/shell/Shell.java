package thalweg.tui.shell;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import thalweg.draft.Draft;
import thalweg.tui.core.Binding;
import thalweg.tui.core.Canvas;
import thalweg.tui.core.Destination;
import thalweg.tui.core.Key;
import thalweg.tui.core.Message;
import thalweg.tui.core.Screen;
import thalweg.tui.core.Step;
import thalweg.tui.core.Surroundings;
import thalweg.tui.screen.LongWork;

/**
 * The interface as a whole: immutable, without any terminal.
 *
 * @param screens makes the screen of a destination
 * @param around what every screen sees
 * @param frames the screens, the one on top last; never empty
 * @param next number for the next screen
 * @param notice one line for the person
 * @param keys the list of keys, where it is open
 * @param asking what a person is asked before something is lost
 * @param ahead keys and pasted text that came before the screen on top had its content, and are acted on once it has
 */
public record Shell(
        Function<Destination, Screen> screens,
        Surroundings around,
        List<Frame> frames,
        long next,
        Optional<Step.Notice> notice,
        Optional<KeyList> keys,
        Optional<Asking> asking,
        List<Message> ahead) {

    /** What would lose an entry if it went on. */
    enum Asking {
        BACK,
        QUIT
    }

    /** The number of no screen: what comes of work for it is for the person. */
    public static final long NOBODY = 0;

    /** Fewer rows or columns cannot hold what a screen must show. */
    static final int LEAST_ROWS = 12;

    static final int LEAST_COLUMNS = 40;

    /** Who presses more than this ahead is leaning on a key. */
    private static final int MOST_AHEAD = 32;

    public Shell {
        frames = List.copyOf(frames);
        ahead = List.copyOf(ahead);
        if (frames.isEmpty()) {
            throw new IllegalArgumentException("there is always a screen");
        }
    }

    /** The interface with its first screen. */
    public static Shell of(Function<Destination, Screen> screens, Destination first, Surroundings around) {
        Frame frame = new Frame(1, screens.apply(first));
        return new Shell(
                screens, around, List.of(frame), 2, Optional.empty(), Optional.empty(), Optional.empty(), List.of());
    }

    /** Starts the first screen's work. */
    public Reaction start() {
        return tell(top(), new Message.Opened());
    }

    Frame top() {
        return frames.get(frames.size() - 1);
    }

    /** The next state upon a message, and what is to be done. */
    public Reaction update(Message message) {
        if (message instanceof Resized resized) {
            return stay(around(around.sized(resized.rows(), resized.columns())));
        }
        if (message instanceof Result result) {
            return frames.stream()
                    .filter(frame -> frame.number() == result.frame())
                    .findFirst()
                    .map(frame -> answered(frame, result.message()))
                    .orElseGet(() -> stay(late(result.message())));
        }
        Shell quiet = notice(Optional.empty());
        if (message instanceof Message.KeyPressed pressed) {
            return quiet.key(pressed.key());
        }
        if (asking.isPresent() || tooSmall()) {
            return stay(quiet);
        }
        if (message instanceof Message.Pasted
                && keys.isEmpty()
                && top().screen().waiting()) {
            return stay(quiet.cameAhead(message));
        }
        if (keys.isPresent()) {
            return stay(quiet.keys(keys.map(list -> list.told(message, around))));
        }
        return message instanceof Message.MousePressed mouse ? pressed(mouse) : quiet.tell(top(), message);
    }

    private Reaction answered(Frame frame, Message message) {
        if (message instanceof Message.Failed) {
            return ahead(List.of()).tell(frame, message);
        }
        Reaction told = tell(frame, message);
        return message instanceof Message.Progressed ? told : told.then(Shell::caughtUp);
    }

    /** What comes too late for its screen changes nothing there any more, but what came of long work is still said. */
    private Shell late(Message message) {
        if (message instanceof Message.Failed failed) {
            return notice(Optional.of(new Step.Notice(failed.sentence(), true)));
        }
        return LongWork.said(message, around)
                .map(said -> notice(Optional.of(new Step.Notice(said, false))))
                .orElse(this);
    }

    /** A press on the foot line does what the key does that is named there. */
    private Reaction pressed(Message.MousePressed mouse) {
        Shell quiet = notice(Optional.empty());
        if (mouse.row() < around.rows() - 1) {
            return quiet.tell(top(), new Message.MousePressed(mouse.row() - 1, mouse.column()));
        }
        return Foot.of(top().screen(), notice, around)
                .at(mouse.column())
                .map(quiet::key)
                .orElseGet(() -> stay(quiet));
    }

    boolean tooSmall() {
        return around.rows() < LEAST_ROWS || around.columns() < LEAST_COLUMNS;
    }

    private Reaction key(Key key) {
        if (key.equals(Key.ctrl('c'))) {
            return new Reaction(this, List.of(), Reaction.Order.QUIT);
        }
        if (key.equals(Key.ctrl('l'))) {
            return new Reaction(this, List.of(), Reaction.Order.REPAINT);
        }
        if (key.equals(Key.ctrl('z'))) {
            return new Reaction(this, List.of(), Reaction.Order.SUSPEND);
        }
        if (tooSmall()) {
            return stay(this);
        }
        if (asking.isPresent()) {
            return answered(asking.get(), key);
        }
        if (keys.isPresent()) {
            return inKeyList(keys.get(), key);
        }
        Screen screen = top().screen();
        if (screen.writing() && key.writes() && screen.waiting()) {
            return stay(cameAhead(new Message.KeyPressed(key)));
        }
        if (!(screen.writing() && key.writes())) {
            for (Binding binding : bindings()) {
                if (binding.keys().contains(key)) {
                    return screen.waiting() && binding.refusal().isPresent()
                            ? stay(cameAhead(new Message.KeyPressed(key)))
                            : run(binding);
                }
            }
            Optional<Reaction> global = global(key);
            if (global.isPresent()) {
                return global.get();
            }
            if (screen.waiting()) {
                return stay(cameAhead(new Message.KeyPressed(key)));
            }
        }
        return tell(top(), new Message.KeyPressed(key));
    }

    private Shell cameAhead(Message message) {
        Shell said = notice(Optional.of(new Step.Notice(around.say("loading"), false)));
        if (ahead.size() == MOST_AHEAD) {
            return said;
        }
        List<Message> more = new ArrayList<>(ahead);
        more.add(message);
        return said.ahead(more);
    }

    /** Acts on what was pressed ahead, as far as the screens have their content by now. */
    private Reaction caughtUp() {
        if (ahead.isEmpty() || top().screen().waiting()) {
            return stay(this);
        }
        Reaction all = stay(ahead(List.of()).notice(Optional.empty()));
        for (Message message : ahead) {
            all = all.then(shell -> shell.update(message));
        }
        return all;
    }

    private List<Binding> bindings() {
        return top().screen().bindings(around);
    }

    private Reaction run(Binding binding) {
        if (binding.refusal().isPresent()) {
            return stay(notice(Optional.of(new Step.Notice(binding.refusal().get(), true))));
        }
        return take(top(), binding.action().get());
    }

    private Optional<Reaction> global(Key key) {
        return Globals.of(key).map(this::global);
    }

    private Reaction global(Globals global) {
        return switch (global) {
            case HELP -> stay(keys(Optional.of(KeyList.of(Globals.all(top().screen(), around)))));
            case UNITS -> stay(around(around.with(around.units().other())));
            case QUIT -> quit();
        };
    }

    private Reaction quit() {
        return unsaved().isLost(Asking.QUIT)
                ? stay(asking(Optional.of(Asking.QUIT)))
                : new Reaction(this, List.of(), Reaction.Order.QUIT);
    }

    private Reaction answered(Asking question, Key key) {
        Shell silent = asking(Optional.empty());
        boolean keeps = key.equals(Key.of('k')) && unsaved().keeps(question);
        if (!key.equals(Key.of('d')) && !keeps) {
            return stay(silent);
        }
        if (question == Asking.BACK) {
            return silent.closed(keeps);
        }
        return keeps ? new Reaction(silent, List.of(), Reaction.Order.QUIT) : silent.quitEmptyHanded();
    }

    Unsaved unsaved() {
        return new Unsaved(frames, around);
    }

    /** Ends without the screens that have something unsaved, and drops what was kept of them. */
    private Reaction quitEmptyHanded() {
        List<Frame> rest = unsaved().rest();
        Shell left = rest.isEmpty() ? this : frames(rest, next);
        return new Reaction(left, unsaved().drops(), Reaction.Order.QUIT);
    }

    /** What was entered on all screens and is not saved. */
    public List<Draft> drafts() {
        return unsaved().drafts();
    }

    private Reaction inKeyList(KeyList list, Key key) {
        if (key.named() == Key.Named.ESCAPE || key.named() == Key.Named.F1) {
            return stay(keys(Optional.empty()));
        }
        if (key.named() == Key.Named.ENTER) {
            List<Binding> found = list.found();
            Shell closed = keys(Optional.empty());
            if (found.isEmpty()) {
                return stay(closed);
            }
            return closed.chosen(found.get(Math.min(list.state().chosen(), found.size() - 1)));
        }
        return stay(keys(Optional.of(list.after(key, KeyList.page(around)))));
    }

    /** Does what was chosen from the list of keys, as it is now: the screen may have changed since the list opened. */
    private Reaction chosen(Binding listed) {
        Optional<Binding> own = bindings().stream()
                .filter(binding -> binding.keys().equals(listed.keys()))
                .findFirst();
        return own.map(this::run).or(() -> global(listed.keys().get(0))).orElseGet(() -> stay(this));
    }

    private Reaction tell(Frame frame, Message message) {
        return take(frame, frame.screen().update(message, around));
    }

    /** Puts the step of one screen into effect; only the screen on top can go somewhere. */
    private Reaction take(Frame frame, Step step) {
        Frame changed = new Frame(frame.number(), step.screen());
        boolean isTop = frame.number() == top().number();
        List<Frame> stack = new ArrayList<>(frames);
        stack.replaceAll(one -> one.number() == frame.number() ? changed : one);
        Shell shell = frames(stack, next).stillAsking();
        if (isTop) {
            shell = shell.notice(step.notice().isPresent() ? step.notice() : shell.notice);
        }
        List<Work> work = new ArrayList<>();
        step.effects().forEach(effect -> work.add(new Work(frame.number(), effect)));
        Reaction moved =
                step.move().isPresent() && isTop ? shell.moved(step.move().get()) : stay(shell);
        work.addAll(moved.work());
        return new Reaction(moved.shell(), work, moved.order());
    }

    private Reaction moved(Step.Move move) {
        if (move instanceof Step.Move.Open open) {
            return opened(frames, open.destination());
        }
        if (move instanceof Step.Move.Replace replace) {
            return opened(frames.subList(0, frames.size() - 1), replace.destination());
        }
        if (top().screen().unsaved()) {
            return stay(asking(Optional.of(Asking.BACK)));
        }
        return closed(true);
    }

    /** A question is dropped once nothing would be lost: an answer to it would mean something else by then. */
    private Shell stillAsking() {
        return unsaved().isLost(asking.orElse(Asking.QUIT)) ? this : asking(Optional.empty());
    }

    private Reaction opened(List<Frame> below, Destination destination) {
        List<Frame> stack = new ArrayList<>(below);
        Frame frame = new Frame(next, screens.apply(destination));
        stack.add(frame);
        return frames(stack, next + 1).tell(frame, new Message.Opened());
    }

    /**
     * The screen on top gives way to the one below.
     *
     * @param keeps whether what was entered there stays behind as a draft; else no draft of it does
     */
    private Reaction closed(boolean keeps) {
        if (frames.size() == 1) {
            return stay(this);
        }
        List<Work> left = unsaved().closing(keeps);
        Shell below = frames(frames.subList(0, frames.size() - 1), next).ahead(List.of());
        return new Reaction(below, left, Reaction.Order.NONE)
                .then(shell -> shell.tell(shell.top(), new Message.Returned()));
    }

    /** Paints everything. */
    public Canvas draw() {
        return Surface.draw(this);
    }

    private static Reaction stay(Shell shell) {
        return new Reaction(shell, List.of(), Reaction.Order.NONE);
    }

    private Shell around(Surroundings changed) {
        return new Shell(screens, changed, frames, next, notice, keys, asking, ahead);
    }

    private Shell frames(List<Frame> changed, long nextNumber) {
        return new Shell(screens, around, changed, nextNumber, notice, keys, asking, ahead);
    }

    private Shell notice(Optional<Step.Notice> changed) {
        return new Shell(screens, around, frames, next, changed, keys, asking, ahead);
    }

    private Shell keys(Optional<KeyList> changed) {
        return new Shell(screens, around, frames, next, notice, changed, asking, ahead);
    }

    private Shell asking(Optional<Asking> changed) {
        return new Shell(screens, around, frames, next, notice, keys, changed, ahead);
    }

    private Shell ahead(List<Message> changed) {
        return new Shell(screens, around, frames, next, notice, keys, asking, changed);
    }
}
