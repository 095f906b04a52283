package thalweg.tui.shell;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import thalweg.draft.Draft;
import thalweg.tui.core.Binding;
import thalweg.tui.core.Canvas;
import thalweg.tui.core.Destination;
import thalweg.tui.core.Message;
import thalweg.tui.core.Screen;
import thalweg.tui.core.Step;
import thalweg.tui.core.Surroundings;
import thalweg.tui.screen.LongWork;
import thalweg.tui.screen.Told;

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
        Frame frame = new Frame(1, screens.apply(first), first);
        return new Shell(
                screens, around, List.of(frame), 2, Optional.empty(), Optional.empty(), Optional.empty(), List.of());
    }

    /** Starts the first screen's work. */
    public Reaction start() {
        return tell(top(), new Message.Opened());
    }

    /** What kind of screen is on top; empty while it waits for its content. */
    public Optional<Class<? extends Screen>> scene() {
        Screen screen = top().screen();
        return screen.waiting() ? Optional.empty() : Optional.of(screen.getClass());
    }

    Frame top() {
        return frames.get(frames.size() - 1);
    }

    /**
     * The next state upon a message, and what is to be done.
     *
     * @throws ScreenFailure when a screen met a mistake of the program; {@link #without} goes on without it
     */
    public Reaction update(Message message) {
        return top().guarded(() -> updated(message));
    }

    private Reaction updated(Message message) {
        if (message instanceof Resized resized) {
            return stay(around(around.sized(resized.rows(), resized.columns())));
        }
        if (message instanceof Message.Focused) {
            return stay(this);
        }
        if (message instanceof Result result) {
            return frames.stream()
                    .filter(frame -> frame.number() == result.frame())
                    .findFirst()
                    .map(frame -> answered(frame, result.message()))
                    .orElseGet(() -> result.message() instanceof Message.ChangedElsewhere
                            ? changedElsewhere()
                            : tooLate(result.message()));
        }
        Shell quiet = notice(Optional.empty());
        if (message instanceof Message.KeyPressed pressed) {
            return new Pressed(quiet).by(pressed.key());
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

    /**
     * The screen on top reads anew what it shows, or, where it has entries, looks what became of what they are about. One
     * that does neither says that it is from before.
     */
    private Reaction changedElsewhere() {
        Frame top = top();
        Reaction told = tell(top, new Message.ChangedElsewhere());
        Reaction read = told.work().isEmpty() ? tell(top, new Message.Returned()) : told;
        if (read.work().isEmpty() && top.screen().writing()) {
            return stay(this);
        }
        String key = read.work().isEmpty() ? "changed.from_before" : "changed.read_anew";
        return new Reaction(
                read.shell().notice(Optional.of(new Step.Notice(around.say(key), false))), read.work(), read.order());
    }

    private Reaction answered(Frame frame, Message message) {
        if (message instanceof Message.Failed) {
            return ahead(List.of()).tell(frame, message);
        }
        Shell over = message instanceof Message.Progressed ? this : notice(notice.filter(line -> !line.passing()));
        Shell signing = message instanceof Told.KeeperSet set ? over.around(around.signedBy(set.name())) : over;
        Reaction told = signing.tell(frame, message);
        return message instanceof Message.Progressed ? told : told.then(Shell::caughtUp);
    }

    private Reaction tooLate(Message message) {
        Reaction said = stay(late(message));
        return message instanceof Told.TakenIn
                ? said.then(shell -> shell.tell(shell.top(), new Message.Returned()))
                : said;
    }

    /** What comes too late for its screen changes nothing there any more, but what came of long work is still said. */
    private Shell late(Message message) {
        if (message instanceof Message.Failed failed) {
            return notice(Optional.of(new Step.Notice(failed.sentence(), true)));
        }
        if (message instanceof Message.Waiting) {
            return notice(Optional.of(new Step.Notice(around.say("waiting.busy"), false, true)));
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
                .map(new Pressed(quiet)::by)
                .orElseGet(() -> stay(quiet));
    }

    boolean tooSmall() {
        return around.rows() < LEAST_ROWS || around.columns() < LEAST_COLUMNS;
    }

    Shell cameAhead(Message message) {
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

    List<Binding> bindings() {
        return top().screen().bindings(around);
    }

    Reaction run(Binding binding) {
        if (binding.refusal().isPresent()) {
            return stay(notice(Optional.of(new Step.Notice(binding.refusal().get(), true))));
        }
        return take(top(), binding.action().get());
    }

    Unsaved unsaved() {
        return new Unsaved(frames, around);
    }

    /** What was entered on all screens and is not saved. */
    public List<Draft> drafts() {
        return unsaved().drafts();
    }

    Reaction tell(Frame frame, Message message) {
        return take(frame, frame.guarded(() -> frame.screen().update(message, around)));
    }

    /** Puts the step of one screen into effect; only the screen on top can go somewhere. */
    private Reaction take(Frame frame, Step step) {
        Frame changed = frame.with(step.screen());
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
        Frame frame = new Frame(next, screens.apply(destination), destination);
        stack.add(frame);
        return frames(stack, next + 1).tell(frame, new Message.Opened());
    }

    /**
     * The screen on top gives way to the one below.
     *
     * @param keeps whether what was entered there stays behind as a draft; else no draft of it does
     */
    Reaction closed(boolean keeps) {
        if (frames.size() == 1) {
            return stay(this);
        }
        List<Work> left = unsaved().closing(keeps);
        Shell below = frames(frames.subList(0, frames.size() - 1), next).ahead(List.of());
        return new Reaction(below, left, Reaction.Order.NONE)
                .then(shell -> shell.tell(shell.top(), new Message.Returned()));
    }

    /**
     * Paints everything.
     *
     * @throws ScreenFailure when the screen on top met a mistake of the program
     */
    public Canvas draw() {
        return top().guarded(() -> Surface.draw(this));
    }

    /**
     * The interface without a screen in which a mistake of the program was met: what was entered there is kept, and the
     * first screen begins anew.
     *
     * @param failed number of the screen
     * @param where it is written down, as a clause
     */
    public Reaction without(long failed, String where) {
        Shell said = ahead(List.of())
                .keys(Optional.empty())
                .asking(Optional.empty())
                .notice(Optional.of(new Step.Notice(around.say("screen.failed", where), true)));
        List<Frame> rest =
                frames.stream().filter(frame -> frame.number() != failed).toList();
        boolean first = frames.get(0).number() == failed;
        if (rest.isEmpty() || first) {
            return said.opened(List.of(), frames.get(0).destination());
        }
        Shell left = said.frames(rest, next);
        return top().number() == failed
                ? new Reaction(left, unsaved().held(), Reaction.Order.NONE)
                        .then(shell -> shell.tell(shell.top(), new Message.Returned()))
                : stay(left);
    }

    static Reaction stay(Shell shell) {
        return new Reaction(shell, List.of(), Reaction.Order.NONE);
    }

    Shell around(Surroundings changed) {
        return new Shell(screens, changed, frames, next, notice, keys, asking, ahead);
    }

    Shell frames(List<Frame> changed, long nextNumber) {
        return new Shell(screens, around, changed, nextNumber, notice, keys, asking, ahead);
    }

    Shell notice(Optional<Step.Notice> changed) {
        return new Shell(screens, around, frames, next, changed, keys, asking, ahead);
    }

    Shell keys(Optional<KeyList> changed) {
        return new Shell(screens, around, frames, next, notice, changed, asking, ahead);
    }

    Shell asking(Optional<Asking> changed) {
        return new Shell(screens, around, frames, next, notice, keys, changed, ahead);
    }

    private Shell ahead(List<Message> changed) {
        return new Shell(screens, around, frames, next, notice, keys, asking, changed);
    }
}
