package thalweg.tui.screen;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import thalweg.fault.AppException;
import thalweg.progress.Progress;
import thalweg.service.DraftFolder;
import thalweg.service.LoadPhrases;
import thalweg.service.Session;
import thalweg.settings.Settings;
import thalweg.text.Language;
import thalweg.text.Phrases;
import thalweg.tui.core.Effect;
import thalweg.tui.core.Glyphs;
import thalweg.tui.core.Key;
import thalweg.tui.core.Message;
import thalweg.tui.core.Surroundings;
import thalweg.tui.runtime.RunAsk;
import thalweg.tui.runtime.RunKeep;
import thalweg.tui.shell.Reaction;
import thalweg.tui.shell.Resized;
import thalweg.tui.shell.Result;
import thalweg.tui.shell.Shell;
import thalweg.tui.shell.Work;
import thalweg.units.UnitSystem;

/** Somebody at the keyboard on 25 November 2026; work is done at once. */
final class Walk implements AutoCloseable {

    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-11-25T12:00:00Z"), ZoneOffset.UTC);

    private static final Phrases ENGLISH = LoadPhrases.english();

    private static final String KEEPER = "ada";

    /** The label of the field with the focus. */
    private static final Pattern FOCUSED = Pattern.compile("(?m)^ ?> (.+?)(?:  |$)");

    private final Session session;
    private final RunAsk runner;
    private final RunKeep keep;
    private final Runnable afterwards;
    private final Surroundings around;
    private final Deque<Work> unanswered = new ArrayDeque<>();
    private Shell shell;
    private Reaction.Order lastOrder = Reaction.Order.NONE;
    private String copied = "";
    private String left = "";
    private Progress progress = Progress.UNWATCHED;

    private Walk(
            Session session,
            int rows,
            int columns,
            Glyphs glyphs,
            boolean readOnly,
            Optional<DraftFolder> drafts,
            Runnable afterwards,
            Phrases phrases) {
        this.session = session;
        this.keep = new RunKeep(drafts);
        this.afterwards = afterwards;
        runner = new RunAsk(session, "1.2.3");
        around = new Surroundings(
                phrases,
                UnitSystem.METRIC,
                session.today(),
                glyphs,
                readOnly,
                session.keeper(),
                Settings.standard(phrases).withKeeper(session.setKeeper()),
                rows,
                columns);
        shell = Shell.of(Screens::of, new Go.Canyons(), around);
    }

    /** Begins anew at that place. */
    Walk openAt(Go place) {
        shell = Shell.of(Screens::of, place, around);
        take(shell.start());
        return this;
    }

    /** Opens the program on an empty database. */
    static Walk empty(int rows, int columns) {
        Walk walk = new Walk(
                Session.inMemory(CLOCK, KEEPER),
                rows,
                columns,
                Glyphs.BRAILLE,
                false,
                Optional.empty(),
                () -> {},
                ENGLISH);
        walk.take(walk.shell.start());
        return walk;
    }

    /** Opens the program on the two canyons of the sample data that are fully known. */
    static Walk sample(int rows, int columns) {
        return sample(rows, columns, Glyphs.BRAILLE);
    }

    static Walk sample(int rows, int columns, Glyphs glyphs) {
        return sample(Samples.bytes(), rows, columns, glyphs, false, ENGLISH);
    }

    /** The same in that language. */
    static Walk sample(int rows, int columns, Language language) {
        return sample(Samples.bytes(), rows, columns, Glyphs.BRAILLE, false, LoadPhrases.of(language));
    }

    /** Opens the program on all of the sample data. */
    static Walk allSamples(int rows, int columns) {
        return sample(Samples.all(), rows, columns, Glyphs.BRAILLE, false, ENGLISH);
    }

    /** The same as the sample where nothing can be changed. */
    static Walk readOnly(int rows, int columns) {
        return sample(Samples.bytes(), rows, columns, Glyphs.BRAILLE, true, ENGLISH);
    }

    private static Walk sample(byte[] file, int rows, int columns, Glyphs glyphs, boolean readOnly, Phrases phrases) {
        Path folder = FilledDatabases.copy(file, CLOCK, KEEPER);
        Session session = Session.writing(FilledDatabases.in(folder), CLOCK, KEEPER);
        Walk walk = new Walk(
                session,
                rows,
                columns,
                glyphs,
                readOnly,
                Optional.empty(),
                () -> FilledDatabases.delete(folder),
                phrases);
        walk.take(walk.shell.start());
        return walk;
    }

    /**
     * Opens the program on a copy of the sample in that folder, which is made where it is missing, and keeps drafts there.
     * What is typed is on the disk after every key, as it is in the program after a moment.
     */
    static Walk keeping(Path folder, Clock clock, boolean readOnly, int rows, int columns) {
        Path file = FilledDatabases.in(folder);
        if (!Files.exists(file)) {
            FilledDatabases.into(folder, Samples.bytes(), CLOCK, KEEPER);
        }
        Session session = readOnly ? Session.reading(file, clock, KEEPER) : Session.writing(file, clock, KEEPER);
        Optional<DraftFolder> drafts = readOnly
                ? Optional.empty()
                : Optional.of(DraftFolder.of(folder.resolve("drafts"), file, clock, line -> {}));
        Walk walk = new Walk(session, rows, columns, Glyphs.BRAILLE, readOnly, drafts, () -> {}, ENGLISH);
        walk.take(walk.shell.start());
        return walk;
    }

    /** Opens the program on a database without a canyon, as a file in that folder. */
    static Walk emptyIn(Path folder, int rows, int columns) {
        Session session = Session.creating(FilledDatabases.in(folder), CLOCK, KEEPER);
        Walk walk = new Walk(session, rows, columns, Glyphs.BRAILLE, false, Optional.empty(), () -> {}, ENGLISH);
        walk.take(walk.shell.start());
        return walk;
    }

    static Walk keeping(Path folder) {
        return keeping(folder, CLOCK, false, 24, 80);
    }

    /** What screens see at the start. */
    Surroundings around() {
        return around;
    }

    Session session() {
        return session;
    }

    Shell shell() {
        return shell;
    }

    Reaction.Order lastOrder() {
        return lastOrder;
    }

    /** Where the program was left to. */
    String left() {
        return left;
    }

    /** From now on long work is watched by that, which may stop it. */
    Walk watchedBy(Progress watching) {
        progress = watching;
        return this;
    }

    String copied() {
        return copied;
    }

    private void take(Reaction reaction) {
        unanswered.addAll(reaction.work());
        shell = reaction.shell();
        lastOrder = reaction.order();
        answerAll();
    }

    /** Something happens while work is still being done; {@link #answerAll} ends that. */
    Walk tellUnanswered(Message message) {
        Reaction reaction = shell.update(message);
        unanswered.addAll(reaction.work());
        shell = reaction.shell();
        return this;
    }

    /** Tells the screen that asked for work last how that goes. */
    Walk told(Message message) {
        return tellUnanswered(new Result(unanswered.getLast().frame(), message));
    }

    /** The work that is still to be done. */
    List<Effect> asked() {
        return unanswered.stream().map(Work::effect).toList();
    }

    /** A key is pressed after a while, upon which the program looks whether another window changed something. */
    Walk look() {
        return tell(new Result(Shell.NOBODY, runner.run(new Effect.Look())));
    }

    /** Does all work that was asked for. */
    void answerAll() {
        Deque<Work> todo = unanswered;
        while (!todo.isEmpty()) {
            Work work = todo.removeFirst();
            if (work.effect() instanceof Effect.Copy copy) {
                copied = copy.text();
                continue;
            }
            if (work.effect() instanceof Effect.Leave leave) {
                left = leave.to();
                continue;
            }
            if (work.effect() instanceof Effect.Stop) {
                continue;
            }
            for (Message message : answers(work.effect()).stream().toList()) {
                Reaction next = shell.update(new Result(work.frame(), message));
                shell = next.shell();
                todo.addAll(next.work());
            }
        }
        keep.flush(shell.drafts());
    }

    private Optional<Message> answers(Effect effect) {
        try {
            return effect instanceof Keep asked ? keep.run(asked) : Optional.of(runner.run(effect, progress));
        } catch (AppException e) {
            return Optional.of(new Message.Failed(effect, e.sentence()));
        }
    }

    Walk tell(Message message) {
        take(shell.update(message));
        return this;
    }

    Walk press(Key... keys) {
        List.of(keys).forEach(key -> tell(new Message.KeyPressed(key)));
        return this;
    }

    Walk press(Key.Named key) {
        return press(Key.of(key));
    }

    /** The key as many times as that. */
    Walk press(Key.Named key, int times) {
        for (int i = 0; i < times; i++) {
            press(key);
        }
        return this;
    }

    /** Types characters, each a key of its own. */
    Walk type(String text) {
        text.codePoints().forEach(c -> press(Key.of(c)));
        return this;
    }

    /** Goes down in a form to the field of that label, cut short or not, whether it is marked as a start or not. */
    Walk field(String label) {
        String marked = around.say("rig_form.start", label);
        for (int i = 0; i < 60; i++) {
            Matcher focused = FOCUSED.matcher(screen());
            String shown = focused.find() ? focused.group(1) : "";
            boolean cut = shown.endsWith("…") && marked.startsWith(shown.substring(0, shown.length() - 1));
            if (cut || shown.equals(label) || shown.equals(marked)) {
                return this;
            }
            press(Key.Named.DOWN);
        }
        throw new AssertionError("the form shows no field " + label + ":\n" + screen());
    }

    /** Replaces what is in the field of that label. */
    Walk fill(String label, String text) {
        return field(label).press(Key.ctrl('a')).press(Key.ctrl('k')).type(text);
    }

    /** In the form of a rig, confirms everything that nobody has stated. */
    Walk confirmStart() {
        for (String label : List.of("Load is", "Aim", "Layout", "Material")) {
            field(label).press(Key.Named.ENTER);
        }
        return this;
    }

    Walk resize(int rows, int columns) {
        return tell(new Resized(rows, columns));
    }

    /** What is on the screen. */
    String screen() {
        return shell.draw().text();
    }

    @Override
    public void close() {
        session.close();
        afterwards.run();
    }
}
